import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const project = join(import.meta.dirname, '..');

/** All that lies at the top, beside the dotfiles: four folders, two documents, and what npm needs. */
const TOP_LEVEL = [
  'DEVELOPERS.md',
  'LICENSE',
  'README.md',
  'geometry',
  'package-lock.json',
  'package.json',
  'samples',
  'tests',
  'tsconfig.json',
  'web',
];

test('the top level holds what it should and no more', () => {
  // Reads the folder, not git: git may be absent, and a stray file is found before it is committed.
  const ignored = readFileSync(join(project, '.gitignore'), 'utf8')
    .split('\n')
    .map((line) => line.replace(/\/$/, ''));
  const found = readdirSync(project).filter((name) => !name.startsWith('.') && !ignored.includes(name));
  expect(found.sort()).toEqual(TOP_LEVEL);
});
