import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { importsOf } from './layers/imports.ts';
import { layerFaults, type Sources } from './layers/layer-faults.ts';

/** Fewer files than this and the reading itself has failed. Keep it near the real number. */
const LEAST_FILES = 200;

const project = join(import.meta.dirname, '..');

function readSources(): Sources {
  const found = ['geometry', 'web'].flatMap((folder) =>
    readdirSync(join(project, folder), { recursive: true, encoding: 'utf8' })
      .filter((path) => /\.(?:ts|tsx|mjs|js)$/.test(path))
      .map((path) => `${folder}/${path.replaceAll('\\', '/')}`),
  );
  return new Map(found.map((path) => [path, readFileSync(join(project, path), 'utf8')]));
}

describe('the folder order', () => {
  const sources = readSources();

  test('enough files were read to say anything', () => {
    expect(sources.size).toBeGreaterThanOrEqual(LEAST_FILES);
    const imports = [...sources.values()].flatMap(importsOf);
    expect(imports.length).toBeGreaterThan(sources.size);
  });

  test('every import goes to the left', () => {
    expect(layerFaults(sources)).toEqual([]);
  });
});

describe('each guard can fail', () => {
  const planted = (files: Record<string, string>) => layerFaults(new Map(Object.entries(files))).join('\n');

  test.each([
    [
      'a stage that imports from its right',
      'geometry/part/a.ts',
      "import { x } from '../depth/b.ts';",
      /depth comes after part/,
    ],
    [
      'a type from the right',
      'geometry/job/a.ts',
      "import type { X } from '../part/face.ts';",
      /part comes after job/,
    ],
    [
      'units from anything',
      'geometry/units.ts',
      "export { x } from './job/job.ts';",
      /job comes after units\.ts/,
    ],
    [
      'material from balance',
      'geometry/material/a.ts',
      "import { x } from '../balance/b.ts';",
      /do not know each other/,
    ],
    [
      'clearance from material',
      'geometry/clearance/a.ts',
      "import { x } from '../material/b.ts';",
      /do not know each other/,
    ],
    [
      'the flow test from balance',
      'geometry/flow-test/flow-test.ts',
      "import { x } from '../balance/b.ts';",
      /do not know each other/,
    ],
    [
      'a stage from the estimate',
      'geometry/plan/a.ts',
      "import { estimate } from '../estimate.ts';",
      /estimate\.ts comes after plan/,
    ],
    [
      'the estimate from the sheet',
      'geometry/estimate.ts',
      "import { x } from './sheet/text.ts';",
      /sheet comes after estimate/,
    ],
    [
      'the sheet from the command',
      'geometry/sheet/a.ts',
      "import { x } from '../command.ts';",
      /command\.ts comes after sheet/,
    ],
    [
      'a folder nobody has heard of',
      'geometry/helpers/a.ts',
      "import { x } from '../units.ts';",
      /no place in the order/,
    ],
    [
      'the engine from the screen',
      'geometry/fill/a.ts',
      "import { x } from '../../web/view/b.ts';",
      /nothing from elsewhere/,
    ],
    [
      'the engine from a test',
      'geometry/fill/a.ts',
      "import { x } from '../../tests/b.ts';",
      /nothing from elsewhere/,
    ],
    [
      'the engine from react',
      'geometry/sheet/a.tsx',
      "import { useState } from 'react';",
      /takes only d3-contour, earcut, ical-generator, zod/,
    ],
    [
      'the engine from three',
      'geometry/part/a.ts',
      "import {\n  Mesh,\n  Vector3,\n} from 'three';",
      /takes only d3-contour, earcut, ical-generator, zod/,
    ],
    [
      'the engine from node',
      'geometry/job/a.ts',
      "import { readFileSync } from 'node:fs';",
      /only command\.ts/,
    ],
    ['the engine on the clock', 'geometry/plan/a.ts', 'const now = Date.now();', /no clock/],
    ['the engine by chance', 'geometry/depth/a.ts', 'const x = Math.random();', /no chance/],
    ['a page from node', 'web/files/a.ts', "import { join } from 'node:path';", /a page has no node/],
    [
      'a page from a test',
      'web/files/a.ts',
      "import { x } from '../../tests/b.ts';",
      /web\/, geometry\/ and samples\/ only/,
    ],
    [
      'a page from the command',
      'web/files/a.ts',
      "import { x } from '../../geometry/command.ts';",
      /does not run the command/,
    ],
    ['a tool from react', 'web/tools/a.ts', "import { useState } from 'react';", /does not draw/],
    ['a tool from three', 'web/tools/a.ts', "import type { Vector3 } from 'three/webgpu';", /does not draw/],
    ['a tool from fiber', 'web/tools/a.ts', "const x = await import('@react-three/fiber');", /does not draw/],
    ['machinery', 'web/main.tsx', "import './vite.config.ts';", /machinery/],
  ])('%s', (_, path, text, fault) => {
    expect(planted({ [path]: text })).toMatch(fault);
  });

  test('a worker that loads three through another file', () => {
    const files = {
      'web/worker/estimate.worker.ts': "import { x } from '../wear/a.ts';",
      'web/wear/a.ts': "import type { Mesh } from 'three';\nimport { y } from './b.ts';",
      'web/wear/b.ts': "import { Color } from 'three';",
    };
    expect(planted(files)).toBe(
      'web/worker/estimate.worker.ts reaches web/wear/a.ts > web/wear/b.ts > three: a worker draws nothing',
    );
  });

  test('what is in order passes', () => {
    const files = {
      'geometry/depth/a.ts':
        "import type { Face } from '../part/face.ts';\nimport { TURN } from '../units.ts';",
      'geometry/sheet/a.ts': "import type { Estimate } from '../estimate.ts';",
      'geometry/command.ts':
        "import { readFileSync } from 'node:fs';\nimport { toResult } from './sheet/result.ts';",
      'geometry/part/outline.ts': "import earcut from 'earcut';\n// import { x } from '../depth/b.ts';",
      'web/tools/a.ts': "import type { Face } from '../../geometry/part/face.ts';",
      'web/scene/a.tsx': "import { Mesh } from 'three';\nimport { x } from '../tools/a.ts';",
    };
    expect(planted(files)).toBe('');
  });
});

describe('the reading of imports', () => {
  test.each([
    ["import a from 'a'", ['a']],
    ["import a, { b as c } from 'a'", ['a']],
    ["import * as a from 'a'", ['a']],
    ["import {\n  b,\n  type C,\n} from 'a';", ['a']],
    ["import type { B } from 'a'", ['a']],
    ["import 'a.css'", ['a.css']],
    ["export * from 'a'", ['a']],
    ["export { b } from 'a'", ['a']],
    ["export type { B } from 'a'", ['a']],
    ["const a = await import('a')", ['a']],
    ['const a = await import(`a`)', ['a']],
    ["new Worker(new URL('./a.ts', import.meta.url), { type: 'module' })", ['./a.ts']],
    ["import.meta.glob('../samples/*.json')", ['../samples/*.json']],
    ["// import a from 'a'\n/* import b from 'b' */\n/** `import('c')` */", []],
    ["const text = 'no // comment'; import a from 'a'", ['a']],
    ["const from = 'a'; const x = { from: 'b' };", []],
    ["export const a = 1;\nconst b = from('c');", []],
  ])('%j', (text, expected) => {
    expect(importsOf(text).map(({ from }) => from)).toEqual(expected);
  });
});
