import { defineConfig } from 'vite';

/** The headless command as one file that needs no packages beside it. `run-command.mjs` says where it goes. */
export default defineConfig({
  root: import.meta.dirname,
  publicDir: false,
  ssr: { noExternal: true, target: 'node' },
  build: {
    ssr: 'command.ts',
    target: 'node20',
    minify: false,
    rolldownOptions: { output: { codeSplitting: false, entryFileNames: 'fettle.mjs' } },
  },
});
