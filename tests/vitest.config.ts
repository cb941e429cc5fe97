import { join } from 'node:path';
import { defineConfig, type TestProjectInlineConfiguration } from 'vitest/config';
import { closingLine } from './closing-line.ts';

const root = join(import.meta.dirname, '..');

/** A project that drives a browser: one browser and one built app for all files, one file at a time. */
function inBrowser(name: string, include: string): TestProjectInlineConfiguration {
  return {
    root,
    test: {
      name,
      include: [include],
      environment: 'node',
      globalSetup: ['tests/browser/setup.ts'],
      fileParallelism: false,
      // The processor draws in place of a graphics card, and shares two cores with the tests: waiting long costs nothing.
      testTimeout: 180_000,
      hookTimeout: 60_000,
      expect: { poll: { timeout: 30_000, interval: 100 } },
    },
  };
}

export default defineConfig({
  root,
  test: {
    reporters: ['default', closingLine],
    projects: [
      {
        root,
        test: {
          name: 'unit',
          environment: 'node',
          // Two cores share this with a browser and its software renderer.
          testTimeout: 20_000,
          include: ['tests/{geometry,web,oracle,worked}/**/*.test.{ts,tsx}', 'tests/*.test.ts'],
        },
      },
      inBrowser('browser', 'tests/browser/**/*.test.ts'),
      inBrowser('shots', 'tests/shots/shots.ts'),
    ],
  },
});
