import { checkReference } from './check-reference.ts';
import { type Fault, missing, shown } from './fault.ts';
import type { ImpellerFile, JobFile } from './job-file.ts';
import type { CorrectionFile } from './measured-rotor.ts';
import type { Readable } from './readable.ts';

type Job = Readable<JobFile>;
type Rotor = NonNullable<Job['rotor']>;
type Impeller = Readable<ImpellerFile>;
type Correction = Readable<CorrectionFile>;

/** What the rotor must agree on: its part exists, two planes stand apart, and corrections lie on the shroud and stay blind. */
export function checkRotor(rotor: Rotor, parts: NonNullable<Job['parts']>): Fault[] {
  const faults = checkReference(rotor.part, parts, 'rotor.part');
  if (rotor.planes === 2 && rotor.planeSpacing === undefined) {
    faults.push(missing('rotor.planeSpacing', 'the distance between the two planes in mm'));
  }
  const part = parts.find((candidate) => candidate?.id != null && candidate.id === rotor.part);
  const { corrections } = rotor;
  if (part?.kind == null || corrections == null || corrections.length === 0) return faults;
  const where = part.kind === 'impeller' ? 'on an open impeller' : 'on a wear plate';
  if (part.kind !== 'impeller' || part.shroudThickness === 0) {
    const needs = `left out ${where}: they go on the shroud of an impeller`;
    const problem = `${shown(corrections)} is to be ${needs}`;
    return [...faults, { field: 'rotor.corrections', found: shown(corrections), needs, problem }];
  }
  return [
    ...faults,
    ...corrections.flatMap((correction, i) =>
      correction === null ? [] : checkCorrection(correction, part, `rotor.corrections[${i}]`),
    ),
  ];
}

function checkCorrection(correction: Correction, impeller: Impeller, field: string): Fault[] {
  switch (correction.kind) {
    case 'holes':
      return correction.face === 'shroud/rim'
        ? checkRimHoles(correction, impeller, field)
        : checkBackHoles(correction, impeller, field);
    case 'skim':
      return [...checkSector(correction, impeller, field), ...checkBlind(correction.depth, impeller, field)];
    case 'putty':
      return [
        ...checkSector(correction, impeller, field),
        ...checkHeight(correction.height, impeller, field),
      ];
    default:
      return [];
  }
}

type Holes = Extract<Correction, { readonly kind?: 'holes' | null }>;
type Sector = Exclude<Correction, Holes>;

function checkBackHoles({ at, diameter, depth, face }: Holes, impeller: Impeller, field: string): Fault[] {
  if (face == null) return [];
  const { hubDiameter: hub, outerDiameter: outer } = impeller;
  const faults = checkBlind(depth, impeller, field);
  if (at == null || diameter == null || hub == null || outer == null) return faults;
  const [least, most] = [(hub + diameter) / 2, (outer - diameter) / 2];
  return [
    ...at.flatMap(([radius], i) =>
      radius >= least && radius <= most
        ? []
        : [
            {
              field: `${field}.at[${i}][0]`,
              found: shown(radius),
              needs: `a radius from ${least} to ${most}, where a hole of ${diameter} stays on the shroud`,
            },
          ],
    ),
    ...faults,
  ];
}

function checkRimHoles({ at, diameter, depth }: Holes, impeller: Impeller, field: string): Fault[] {
  const { hubDiameter: hub, outerDiameter: outer, shroudThickness: thickness } = impeller;
  const faults: Fault[] = [];
  if (diameter != null && thickness != null && diameter >= thickness) {
    const needs = `less than shroudThickness ${thickness}, the width of the rim`;
    faults.push({ field: `${field}.diameter`, found: shown(diameter), needs });
  } else if (at != null && diameter != null && thickness != null) {
    const [least, most] = [diameter / 2, thickness - diameter / 2];
    for (const [i, [, below]] of at.entries()) {
      if (below >= least && below <= most) continue;
      const needs = `from ${least} to ${most} below the vane side, where a hole of ${diameter} stays in the rim`;
      faults.push({ field: `${field}.at[${i}][1]`, found: shown(below), needs });
    }
  }
  if (depth != null && hub != null && outer != null && depth >= (outer - hub) / 2) {
    const needs = `less than ${(outer - hub) / 2}, from the rim to the hub`;
    faults.push({ field: `${field}.depth`, found: shown(depth), needs });
  }
  return faults;
}

/** What is taken off the back stays short of the vane side. */
function checkBlind(depth: number | null | undefined, { shroudThickness }: Impeller, field: string): Fault[] {
  if (depth == null || shroudThickness == null || depth < shroudThickness) return [];
  const needs = `less than shroudThickness ${shroudThickness}`;
  return [{ field: `${field}.depth`, found: shown(depth), needs }];
}

function checkSector({ first, second }: Sector, impeller: Impeller, field: string): Fault[] {
  const faults: Fault[] = [];
  const { hubDiameter: hub, outerDiameter: outer } = impeller;
  if (first != null && first[0] >= first[1]) {
    faults.push({
      field: `${field}.first`,
      found: shown(first),
      needs: 'from the smaller radius to the larger',
    });
  } else if (first != null && hub != null && outer != null) {
    for (const [i, radius] of first.entries()) {
      if (radius >= hub / 2 && radius <= outer / 2) continue;
      const needs = `a radius on the shroud, from ${hub / 2} to ${outer / 2}`;
      faults.push({ field: `${field}.first[${i}]`, found: shown(radius), needs });
    }
  }
  if (second != null && second[1] <= second[0] && (second[0] - second[1]) % 360 === 0) {
    const needs = 'two different angles; the whole turn is [0, 360]';
    faults.push({ field: `${field}.second`, found: shown(second), needs });
  }
  return faults;
}

/** Putty stands between the vanes, not above them. */
function checkHeight(height: number | null | undefined, { vanes }: Impeller, field: string): Fault[] {
  const { heightInlet, heightOutlet } = vanes ?? {};
  if (height == null || heightInlet == null || heightOutlet == null) return [];
  const lower = Math.min(heightInlet, heightOutlet);
  if (height <= lower) return [];
  const name = heightOutlet <= heightInlet ? 'heightOutlet' : 'heightInlet';
  return [{ field: `${field}.height`, found: shown(height), needs: `at most vanes.${name} ${lower}` }];
}
