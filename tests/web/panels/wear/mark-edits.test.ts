import { describe, expect, it } from 'vitest';
import { estimate } from '../../../../geometry/estimate.ts';
import { checkJob } from '../../../../geometry/job/check-job.ts';
import type { JobFile, WearPlateFile } from '../../../../geometry/job/job-file.ts';
import { measured } from '../../../../geometry/job/measured.ts';
import { newPlateJob } from '../../../../geometry/job/new-plate-job.ts';
import { asOutline, withPlate } from '../../../../web/panels/part/part-edits.ts';
import {
  startMark,
  withMark,
  withMarkMoved,
  withMarks,
  withoutMark,
} from '../../../../web/panels/wear/mark-edits.ts';

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
