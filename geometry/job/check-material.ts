import { type Fault, missing, shown } from './fault.ts';
import type { CoatFile, FillerFile } from './job-file.ts';
import type { Readable } from './readable.ts';

/** What the values of a filler must agree on. */
export function checkFiller(filler: Readable<FillerFile>): Fault[] {
  const { leastBuild: least, mostBuild: most } = filler;
  const faults = [
    ...checkParts(filler, 'filler'),
    ...checkWindow(filler.firmsUp, 'filler.firmsUp'),
    ...checkWindow(filler.surfaceRange, 'filler.surfaceRange'),
  ];
  if (least != null && most != null && least > most) {
    faults.push({ field: 'filler.leastBuild', found: shown(least), needs: `at most mostBuild ${most}` });
  }
  return faults;
}

/** What the values of a coat must agree on. */
export function checkCoat(coat: Readable<CoatFile>): Fault[] {
  return [
    ...checkParts(coat, 'coat'),
    ...checkWindow(coat.overcoat, 'coat.overcoat'),
    ...checkWindow(coat.surfaceRange, 'coat.surfaceRange'),
  ];
}

function checkParts(material: Readable<FillerFile> | Readable<CoatFile>, field: string): Fault[] {
  const faults: Fault[] = [];
  const { densityA, densityB, packs } = material;
  const needs = 'the densities of both parts, or of neither';
  if (densityA === undefined && densityB != null) faults.push(missing(`${field}.densityA`, needs));
  if (densityB === undefined && densityA != null) faults.push(missing(`${field}.densityB`, needs));
  for (const [i, pack] of (packs ?? []).entries()) {
    if (pack === null) continue;
    const { mass, volume } = pack;
    const at = `${field}.packs[${i}].mass`;
    if (mass === undefined && volume === undefined)
      faults.push(missing(at, 'a mass in g, or a volume in cm3 in its place'));
    if (mass != null && volume != null) {
      const left = 'left out beside a volume: a pack has one of the two';
      faults.push({ field: at, found: shown(mass), needs: left, problem: `${mass} is to be ${left}` });
    }
  }
  return faults;
}

function checkWindow(
  window: Readable<{ readonly from: number; readonly to: number }> | null | undefined,
  field: string,
): Fault[] {
  if (window?.from == null || window.to == null || window.from <= window.to) return [];
  return [{ field: `${field}.from`, found: shown(window.from), needs: `at most ${window.to}, the field to` }];
}
