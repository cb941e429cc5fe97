import type { Clearance, FlowTest, History } from './job.ts';
import type { ClearanceFile, FlowTestFile, HistoryFile } from './job-file.ts';

/** Grade of ISO 9906 that instruments in the field are taken to keep to. */
const USUAL_GAUGES = 2;

export function measuredClearance(file: ClearanceFile): Clearance {
  const { plate, impeller, asNew, least, most, shim = 0, dressTips = 0 } = file;
  return {
    plate,
    impeller,
    asNew,
    asNewHolds: file.asNewHolds ?? 'everywhere',
    least,
    most,
    shim,
    dressTips,
    tolerances: {
      setting: file.tolerance ?? 0,
      film: file.filmTolerance ?? 0,
      dressing: file.dressTolerance ?? 0,
      runOut: file.runOut ?? 0,
    },
  };
}

/** % to shares; what was left out at its usual value, or null where there is none. */
export function measuredFlowTest(file: FlowTestFile): FlowTest {
  const { density, ratedSpeed, duty, hoursPerYear = null, energyPrice = null, guarantee } = file;
  return {
    density,
    ratedSpeed,
    duty,
    hoursPerYear,
    energyPrice,
    motorEfficiency: shareOf(file.motorEfficiency),
    gauges: gradeOf(file.gauges),
    sameGauges: file.sameGauges ?? false,
    repeatability: shareOf(file.repeatability),
    guarantee:
      guarantee === undefined
        ? null
        : {
            flow: guarantee.flow,
            head: guarantee.head,
            efficiency: shareOf(guarantee.efficiency),
            power: guarantee.power ?? null,
            grade: guarantee.grade,
          },
    runs: file.runs.map((run) => ({
      label: run.label ?? '',
      when: whenOf(run.when),
      speed: run.speed,
      powerAt: run.powerAt ?? 'shaft',
      density: run.density ?? density,
      points: run.points.map(({ flow, head, power }) => ({ flow, head, power })),
    })),
  };
}

export function measuredHistory(file: HistoryFile | undefined): History {
  return {
    hours: file?.hours ?? null,
    repairs: (file?.repairs ?? []).map((repair) => ({
      part: repair.part,
      date: repair.date,
      hours: repair.hours,
      deepest: repair.deepest,
      mean: repair.mean ?? null,
      volume: repair.volume === undefined ? null : repair.volume * 1000,
      note: repair.note ?? '',
    })),
  };
}

/** `Before ` is before; what is none of the three stays as it was written. */
function whenOf(written: string): string {
  const when = written.trim().toLowerCase();
  return ['new', 'before', 'after'].includes(when) ? when : written;
}

const shareOf = (percent: number | undefined): number | null =>
  percent === undefined ? null : percent / 100;

const gradeOf = (grade: number | undefined): FlowTest['gauges'] =>
  grade === 1 || grade === 3 ? grade : USUAL_GAUGES;
