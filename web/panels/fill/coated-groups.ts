import { isListed } from '../../../geometry/fill/fill-map.ts';
import type { JobFile, PartFile } from '../../../geometry/job/job-file.ts';
import { plateFaces } from '../wear/face-words.ts';

/** Faces that are coated or left bare together: one of a plate, all of a kind of an impeller. */
export interface CoatedGroup {
  readonly part: string;
  readonly label: string;
  /** As it stands in the job, `vane-*` for every vane. */
  readonly face: string;
  /** Each face by its own name. */
  readonly names: readonly string[];
}

const OF_VANES: readonly (readonly [face: string, label: string])[] = [
  ['pressure', 'Pressure sides'],
  ['suction', 'Suction sides'],
  ['tip', 'Vane tips'],
  ['leading-edge', 'Leading edges'],
  ['trailing-edge', 'Trailing edges'],
];

export function coatedGroups({ parts }: JobFile): readonly CoatedGroup[] {
  return parts.flatMap((part) => groupsOf(part).map((group) => ({ part: part.id, ...group })));
}

function groupsOf(part: PartFile): readonly Omit<CoatedGroup, 'part'>[] {
  if (part.kind === 'wear-plate')
    return plateFaces(part).map(({ value, label }) => ({ label, face: value, names: [value] }));
  const shroud =
    part.shroudThickness === 0
      ? []
      : [
          { label: 'Shroud, vane side', face: 'shroud/front', names: ['shroud/front'] },
          { label: 'Back of the shroud', face: 'shroud/back', names: ['shroud/back'] },
        ];
  const vanes = OF_VANES.map(([face, label]) => ({
    label,
    face: `vane-*/${face}`,
    names: Array.from({ length: part.vanes.count }, (_, i) => `vane-${i + 1}/${face}`),
  }));
  return [...shroud, ...vanes];
}

/** True when every face of the group is coated. */
export function isCoated(patterns: readonly string[], { part, names }: CoatedGroup): boolean {
  return names.every((name) => isListed(patterns, part, name));
}

/** The list of coated faces with one group switched; what a file has chosen vane by vane stays as it is in the other groups. */
export function withCoated(
  patterns: readonly string[],
  groups: readonly CoatedGroup[],
  switched: CoatedGroup,
  isOn: boolean,
): string[] {
  const listed = groups.flatMap((group) => {
    if (group === switched) return isOn ? [`${group.part}:${group.face}`] : [];
    if (isCoated(patterns, group)) return [`${group.part}:${group.face}`];
    return group.names
      .filter((name) => isListed(patterns, group.part, name))
      .map((name) => `${group.part}:${name}`);
  });
  const isAll = groups.every((group) => (group === switched ? isOn : isCoated(patterns, group)));
  return isAll ? ['*:*'] : listed;
}
