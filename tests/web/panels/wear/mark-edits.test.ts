import { describe, expect, it } from 'vitest';
import { estimate } from '../../../../geometry/estimate.ts';
import { checkJob } from '../../../../geometry/job/check-job.ts';
import type { JobFile, MarkFile, WearPlateFile } from '../../../../geometry/job/job-file.ts';
import { measured } from '../../../../geometry/job/measured.ts';
import { newPlateJob } from '../../../../geometry/job/new-plate-job.ts';
import { asOutline, withPlate } from '../../../../web/panels/part/part-edits.ts';
import { isEdgeOrTip } from '../../../../web/panels/wear/face-words.ts';
import {
  onAllVanes,
  onOneVane,
  startMark,
  withMark,
  withMarkMoved,
  withMarks,
  withoutMark,
} from '../../../../web/panels/wear/mark-edits.ts';
import { impellerJob } from '../../tools/impellers.ts';

const round = newPlateJob();
const outline = withPlate(round, 0, asOutline);
const plateOf = (job: JobFile) => job.parts[0] as WearPlateFile;
const tool = { depth: 2, radius: 6 };

describe('a mark to be typed over', () => {
  const faces = [
    { name: 'face of a round plate', job: round, face: 'face' },
    { name: 'bore', job: round, face: 'bore' },
    { name: 'face of an outline', job: outline, face: 'face' },
  ];
  const cases = faces.flatMap((known) =>
    (['patch', 'pit', 'area'] as const).map((kind) => ({ ...known, kind })),
  );
  it.each(cases)('is sound and lies on its face: $kind on the $name', ({ job, face, kind }) => {
    const mark = startMark(kind, plateOf(job), face, tool);
    const marked = withMarks(job, 0, (marks) => [...marks, mark]);
    expect(checkJob(marked)).toEqual([]);
    const worn = estimate(measured(marked)).parts[0].faces.find((known) => known.face.name === face);
    expect(worn?.deepest).toBeCloseTo(2, 1);
  });
});

describe('a mark of an impeller to be typed over', () => {
  const faces = [
    'shroud/front',
    'shroud/back',
    ...['pressure', 'suction', 'tip', 'leading-edge', 'trailing-edge'].map((name) => `vane-3/${name}`),
  ];
  const cases = faces.flatMap((face) =>
    (['patch', 'pit', 'area', 'edge'] as const).map((kind) => ({ face, kind })),
  );
  it.each(cases.filter(({ face, kind }) => kind !== 'edge' || isEdgeOrTip(face)))(
    'is sound and lies on its face: $kind on $face',
    ({ face, kind }) => {
      const job = impellerJob();
      const mark = startMark(kind, job.parts[0], face, { depth: 2, radius: 3 });
      const marked = withMarks(job, 0, (marks) => [...marks, mark]);
      expect(checkJob(marked)).toEqual([]);
      const worn = estimate(measured(marked), { cell: 1 }).parts[0].faces.filter(
        ({ deepest }) => deepest > 0,
      );
      expect(worn.map((known) => known.face.name)).toEqual([face]);
      expect(worn[0].deepest).toBeCloseTo(2, 1);
    },
  );
});

describe('a mark of one vane and of all', () => {
  const edge: MarkFile = { kind: 'edge', face: 'vane-2/tip', profile: [[0, 1]] };

  it('goes from one to all and back to any, and is otherwise the same', () => {
    const all = onAllVanes(edge);
    expect(all).toEqual({ ...edge, face: 'vane-*/tip' });
    expect(all && onOneVane(all, 4)).toEqual({ ...edge, face: 'vane-4/tip' });
    expect(all && onAllVanes(all)).toBeNull();
    expect(onOneVane(edge, 4)).toBeNull();
    expect(onAllVanes({ ...edge, face: 'shroud/front' })).toBeNull();
  });

  it('on all vanes counts as often as there are vanes', () => {
    const lost = (face: string) =>
      estimate(
        measured(impellerJob([{ kind: 'pit', face, at: [80, 10], diameter: 8, depth: 2, form: 'cone' }])),
        {
          cell: 1,
        },
      ).parts[0].lost.volume;
    expect(lost('vane-*/suction') / lost('vane-1/suction')).toBeCloseTo(5, 6);
  });
});

describe('the list of marks', () => {
  const [a, b, c] = [1, 2, 3].map((depth) => startMark('patch', plateOf(round), 'face', { ...tool, depth }));
  const job = withMarks(round, 0, () => [a, b, c]);
  const marks = (changed: JobFile) => plateOf(changed).wear;

  it('moves a mark one place either way and changes no other', () => {
    expect(marks(withMarkMoved(job, 0, 2, -1))).toEqual([a, c, b]);
    expect(marks(withMarkMoved(job, 0, 0, 1))).toEqual([b, a, c]);
  });

  it('drops and replaces the one that is meant', () => {
    expect(marks(withoutMark(job, 0, 1))).toEqual([a, c]);
    expect(marks(withMark(job, 0, 1, c))).toEqual([a, c, c]);
  });

  it('leaves the job it was given alone', () => {
    expect(marks(job)).toEqual([a, b, c]);
  });
});
