import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { type BrowserServer, chromium } from 'playwright-core';
import { build, type PreviewServer, preview } from 'vite';
import type { TestProject } from 'vitest/node';
import { BROWSER_FLAGS, browserProgram } from './chromium.ts';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Where a test reaches the browser. */
    browser: string;
    /** Address of the built app, with the slash at its end. */
    app: string;
  }
}

const project = join(import.meta.dirname, '../..');
const configFile = join(project, 'web/vite.config.ts');

/** Builds the app as `npm start` does, but into a folder of this run, serves it, and starts one browser for all files. */
export async function setup({ provide }: TestProject): Promise<() => Promise<void>> {
  mkdirSync(join(project, '.build'), { recursive: true });
  const outDir = mkdtempSync(join(project, '.build/tested-'));
  let server: PreviewServer | undefined;
  let browser: BrowserServer | undefined;

  async function close(): Promise<void> {
    await browser?.close();
    await server?.close();
    rmSync(outDir, { recursive: true, force: true });
  }

  try {
    await buildAsShipped(outDir);
    server = await preview({
      configFile,
      logLevel: 'error',
      build: { outDir },
      preview: { host: '127.0.0.1', port: 0 },
    });
    browser = await chromium.launchServer({
      ...(await browserProgram()),
      args: [...BROWSER_FLAGS],
      headless: true,
    });
    provide('browser', browser.wsEndpoint());
    provide('app', addressOf(server));
  } catch (error) {
    // A server left open would hide the cause behind "No test files found".
    await close();
    throw error;
  }
  return close;
}

/** The test runner calls this environment `test`, which would build the packages' development halves. */
async function buildAsShipped(outDir: string): Promise<void> {
  const before = process.env.NODE_ENV;
  process.env.NODE_ENV = 'production';
  try {
    await build({ configFile, logLevel: 'error', build: { outDir } });
  } finally {
    process.env.NODE_ENV = before;
  }
}

function addressOf(server: PreviewServer): string {
  const address = server.httpServer.address();
  if (address === null || typeof address === 'string')
    throw new Error('setup: the preview server has no port');
  return `http://127.0.0.1:${address.port}/`;
}
