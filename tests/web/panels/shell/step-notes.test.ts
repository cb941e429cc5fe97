import { describe, expect, it } from 'vitest';
import { estimate } from '../../../../geometry/estimate.ts';
import type { JobFile } from '../../../../geometry/job/job-file.ts';
import { measured } from '../../../../geometry/job/measured.ts';
import { newPlateJob } from '../../../../geometry/job/new-plate-job.ts';
import { toResult } from '../../../../geometry/sheet/result.ts';
import { newImpeller } from '../../../../web/panels/part/new-impeller.ts';
import { stepNotes } from '../../../../web/panels/shell/step-notes.ts';

const fresh = newPlateJob();
const notesOf = (job: JobFile, refused: readonly string[] = []) =>
  stepNotes(job, toResult(estimate(measured(job))), refused);

describe('what the steps say', () => {
  it('asks a new job for marks and for the data sheets', () => {
    const notes = notesOf(fresh);
    expect(notes.part).toEqual({ text: '1 part', isNeed: false });
    expect(notes.wear).toEqual({ text: 'No marks', isNeed: true });
    expect(notes.fill).toEqual({ text: 'Data sheet', isNeed: true });
    expect(notes.sheet).toEqual({ text: 'Ready', isNeed: false });
  });

  it('asks no more once both materials go by a name of their own', () => {
    const own = (material: JobFile['filler'] & object) => ({ ...material, name: 'ours' });
    const job: JobFile = {
      ...fresh,
      filler: own(fresh.filler ?? fail()),
      coat: { ...(fresh.coat ?? fail()), name: 'ours too' },
      parts: fresh.parts.map((part) => ({
        ...part,
        wear: [{ kind: 'patch', face: 'face', first: [90, 120], second: [0, 90], depth: 2 }],
      })),
    };
    const notes = notesOf(job);
    expect(notes.wear).toEqual({ text: '1 mark', isNeed: false });
    expect(notes.fill).toEqual({ text: '1 mix', isNeed: false });
  });

  it('counts refused fields at the step they stand on', () => {
    const notes = notesOf(fresh, ['parts[0].boreDiameter', 'parts[0].wear[3].depth', 'repair.overbuild']);
    expect([notes.part, notes.wear, notes.fill].map(({ text }) => text)).toEqual([
      '1 fault',
      '1 fault',
      '1 fault',
    ]);
  });

  it('asks for a gap where two parts run against each other, and says how it came out', () => {
    expect(notesOf(fresh).clearance).toEqual({ text: 'No pair', isNeed: false });
    const pair: JobFile = { ...fresh, parts: [...fresh.parts, newImpeller()] };
    expect(notesOf(pair).clearance).toEqual({ text: 'No gap yet', isNeed: true });
    const gap = { plate: 'plate', impeller: 'impeller', asNew: 1.4, least: 0.3, most: 0.6 };
    // Two coats of 0.25 mm on either face leave 0.4 mm (job format, "Clearance").
    expect(notesOf({ ...pair, clearance: gap }).clearance).toEqual({ text: 'Fits', isNeed: false });
    expect(notesOf({ ...pair, clearance: { ...gap, asNew: 1.2 } }).clearance).toEqual({
      text: 'Tight',
      isNeed: true,
    });
    expect(notesOf(fresh).test).toEqual({ text: 'No runs', isNeed: false });
  });

  it('says of a flow test what it proves, and first of all a guarantee that is not met', () => {
    const point = (flow: number, head: number, efficiency: number) => ({
      flow,
      head,
      power: (998 * 9.80665 * flow * head) / 3.6e6 / efficiency,
    });
    const run = (when: 'before' | 'after', efficiency: number) => ({
      when,
      speed: 1450,
      points: [
        point(60, 14, efficiency - 0.05),
        point(90, 12, efficiency),
        point(110, 10, efficiency - 0.05),
      ],
    });
    const tested = (after: number, head?: number): JobFile => ({
      ...fresh,
      flowTest: {
        density: 998,
        ratedSpeed: 1450,
        duty: 90,
        ...(head === undefined ? {} : { guarantee: { flow: 90, head, grade: '2B' } }),
        runs: [run('before', 0.6), run('after', after)],
      },
    });
    // Gauges of grade 2: 6.1 % of each efficiency, 5.2 and 5.4 points together (ISO 9906:2012, 4.3, from memory).
    expect(notesOf(tested(0.72)).test).toEqual({ text: 'Proven', isNeed: false });
    expect(notesOf(tested(0.62)).test).toEqual({ text: 'Not proven', isNeed: false });
    expect(notesOf(tested(0.45)).test).toEqual({ text: 'Worse', isNeed: true });
    expect(notesOf(tested(0.72, 20)).test).toEqual({ text: 'Not met', isNeed: true });
    const { flowTest } = tested(0.72);
    const one: JobFile = { ...fresh, flowTest: flowTest && { ...flowTest, runs: flowTest.runs.slice(0, 1) } };
    expect(notesOf(one).test).toEqual({ text: '1 run', isNeed: false });
  });

  it('counts warnings on the sheet', () => {
    const dense: JobFile = { ...fresh, filler: { ...(fresh.filler ?? fail()), density: 3 } };
    expect(notesOf(dense).sheet).toEqual({ text: '1 warning', isNeed: true });
  });

  it('is not ready before the first figures', () => {
    expect(stepNotes(fresh, null, []).sheet.text).toBe('Not yet');
  });
});

function fail(): never {
  throw new Error('a new job brings both materials');
}
