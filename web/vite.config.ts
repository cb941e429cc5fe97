import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';

/**
 * Nothing leaves the machine and nothing foreign runs: scripts, styles, fonts and workers come from the app's own folder alone.
 * `blob:` pictures are the screen's own exports; `data:` pictures are small icons the build folds into the style sheet.
 */
const CONTENT_POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "font-src 'self'",
  "img-src 'self' data: blob:",
  "worker-src 'self'",
  "connect-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

export default defineConfig({
  root: import.meta.dirname,
  // Relative, so that the build also runs from a folder below the server's root.
  base: './',
  appType: 'mpa',
  plugins: [react(), contentPolicy(), englishAlone()],
  worker: { format: 'es' },
  build: {
    outDir: '../.build/web',
    emptyOutDir: true,
    target: 'es2022',
    // Fonts and pictures stay files: the policy has no `data:` for fonts.
    assetsInlineLimit: 0,
    // kB; the 3D packages are one chunk of about 950 that loads after the first page.
    chunkSizeWarningLimit: 1100,
    rolldownOptions: {
      output: {
        codeSplitting: {
          // What the first page needs is one file: it packs smaller, and no chunk waits for one that waits for it.
          // The 3D packages follow when the view opens, without what they share with the first page.
          groups: [
            { name: 'first', tags: ['$initial'], priority: 2 },
            { name: 'three', test: /[\\/]node_modules[\\/](?:three|@react-three)[\\/]/, priority: 1 },
          ],
        },
      },
    },
  },
});

/** Writes the policy into the built page. The development server is left out: its reloading needs inline scripts. */
function contentPolicy(): Plugin {
  return {
    name: 'content-policy',
    apply: 'build',
    transformIndexHtml: () => [
      {
        tag: 'meta',
        attrs: { 'http-equiv': 'Content-Security-Policy', content: CONTENT_POLICY },
        injectTo: 'head-prepend',
      },
      // The controls write one <style> of their own unless an element of this name is there; the policy would refuse it.
      // Its single rule stands in web/style.css instead.
      { tag: 'meta', attrs: { id: 'react-aria-pressable-style' }, injectTo: 'head' },
    ],
  };
}

/**
 * The controls bring words of their own, "Dismiss" for one, in 34 languages. The page says that it is English, so these must be too;
 * the other 33 would be 3 kB of the first page.
 */
function englishAlone(): Plugin {
  return {
    name: 'english-alone',
    apply: 'build',
    enforce: 'pre',
    transform: {
      filter: { id: /[\\/]react-aria(?:-components)?[\\/].*[\\/]intlStrings\.mjs$/ },
      handler(code, id) {
        const english = code.match(/from "([^"]+[\\/]en-US\.mjs)"/)?.[1];
        if (english === undefined) throw new Error(`englishAlone: ${id} has no en-US`);
        return {
          code: `import english from '${english}';\nexport default { 'en-US': english };\n`,
          map: null,
        };
      },
    },
  };
}
