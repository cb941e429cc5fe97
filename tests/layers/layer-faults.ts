import { type Import, importsOf, withoutComments } from './imports.ts';

/** Path from the project's folder, with slashes, to the text of the file. */
export type Sources = ReadonlyMap<string, string>;

/** The way of the data. A stage imports only from its left; those that share a place never from each other. */
const STAGES: readonly (readonly string[])[] = [
  ['units.ts'],
  ['job'],
  ['part'],
  ['depth'],
  ['fill'],
  ['moments'],
  ['material', 'balance', 'clearance', 'flow-test'],
  ['plan'],
  ['estimate-part.ts'],
  ['estimate-readings.ts'],
  ['reading-warnings.ts'],
  ['estimate.ts'],
  ['sheet'],
  ['command.ts'],
];
/** What the engine may take from npm. */
const ENGINE_PACKAGES = ['d3-contour', 'earcut', 'ical-generator', 'zod/mini'];
/** Not part of the engine: they build and start the command. */
const MACHINERY = [
  'geometry/run-command.mjs',
  'geometry/vite.command.config.ts',
  'web/serve.mjs',
  'web/vite.config.ts',
];
const SCREEN_PACKAGE =
  /^(?:react|react-dom|react-aria|react-aria-components|react-stately|three|@react-three|zustand|lucide-react)(?:\/|$)/;
/** The engine gives the same answer at any time of day, in a browser or not. */
const OUTSIDE_WORLD =
  /\b(?:Math\.random|Date\.now|new Date\(\s*\)|performance\.now|document\.(?:body|createElement|querySelector)|localStorage|fetch\()/;

/** Every breach of the folder order in one go, one sentence each; empty when all is in order. */
export function layerFaults(sources: Sources): string[] {
  const faults: string[] = [];
  for (const [path, text] of sources) {
    if (MACHINERY.includes(path)) continue;
    const imports = importsOf(text).map((found) => ({
      ...found,
      target: targetOf(path, found.from, sources),
    }));
    for (const { from, target } of imports) {
      const fault = target === null ? packageFault(path, from) : fileFault(path, target);
      if (fault !== null) faults.push(`${path} imports ${from}: ${fault}`);
    }
    const world =
      path.startsWith('geometry/') &&
      path !== 'geometry/command.ts' &&
      OUTSIDE_WORLD.exec(withoutComments(text));
    if (world) faults.push(`${path} uses ${world[0]}: the engine knows no clock, no chance and no page`);
  }
  for (const path of sources.keys()) {
    if (!path.endsWith('.worker.ts')) continue;
    for (const chain of reached(path, sources))
      faults.push(`${path} reaches ${chain}: a worker draws nothing`);
  }
  return faults;
}

function packageFault(path: string, from: string): string | null {
  if (path.startsWith('geometry/')) {
    if (from.startsWith('node:'))
      return path === 'geometry/command.ts' ? null : 'only command.ts touches the machine';
    return ENGINE_PACKAGES.includes(from)
      ? null
      : `the engine takes only ${ENGINE_PACKAGES.join(', ')} from outside`;
  }
  if (from.startsWith('node:')) return 'a page has no node';
  if (path.startsWith('web/tools/') && SCREEN_PACKAGE.test(from)) return 'a tool decides, it does not draw';
  return null;
}

function fileFault(path: string, target: string): string | null {
  if (MACHINERY.includes(target)) return 'this is machinery, not part of the app';
  if (path.startsWith('web/')) {
    if (target === 'geometry/command.ts') return 'the screen does not run the command';
    return target.startsWith('web/') || target.startsWith('geometry/') || target.startsWith('samples/')
      ? null
      : 'the screen imports web/, geometry/ and samples/ only';
  }
  if (!target.startsWith('geometry/')) return 'geometry/ imports nothing from elsewhere in the project';
  const [own, other] = [stageOf(path), stageOf(target)];
  if (own === null) return 'its folder has no place in the order of the stages';
  if (other === null) return 'that folder has no place in the order of the stages';
  if (own.place === other.place && own.name !== other.name)
    return `${own.name} and ${other.name} do not know each other`;
  return other.place <= own.place ? null : `${other.name} comes after ${own.name}`;
}

/** Which stage a file of geometry/ belongs to: that of its folder, or its own when it stands alone. */
function stageOf(path: string): { readonly place: number; readonly name: string } | null {
  const name = path.split('/')[1];
  const place = STAGES.findIndex((stage) => stage.includes(name));
  return place < 0 ? null : { place, name };
}

/** Path of the file an import means; null for a package. A file that was not handed in still has a path. */
function targetOf(path: string, from: string, sources: Sources): string | null {
  if (!from.startsWith('.')) return null;
  const steps = path.split('/').slice(0, -1);
  for (const step of from.replace(/\?.*$/, '').split('/')) {
    if (step === '..') {
      if (steps.pop() === undefined) return from;
    } else if (step !== '.') steps.push(step);
  }
  const target = steps.join('/');
  return sources.has(`${target}.ts`) ? `${target}.ts` : target;
}

/** Ways by which running `start` loads a package that draws: `a.ts > b.ts > three`. */
function reached(start: string, sources: Sources): string[] {
  const chains: string[] = [];
  const seen = new Set([start]);
  const open: { readonly path: string; readonly way: string }[] = [{ path: start, way: '' }];
  for (const { path, way } of open) {
    const runs = importsOf(sources.get(path) ?? '').filter(({ isType }: Import) => !isType);
    for (const { from } of runs) {
      const target = targetOf(path, from, sources);
      if (target === null && SCREEN_PACKAGE.test(from)) chains.push(`${way}${from}`);
      if (target === null || seen.has(target)) continue;
      seen.add(target);
      open.push({ path: target, way: `${way}${target} > ` });
    }
  }
  return chains;
}
