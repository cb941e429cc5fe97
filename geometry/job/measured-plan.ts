import { USUAL_COAT_RATE, USUAL_STEP_TIMES } from './defaults.ts';
import type { Climate, LogEntry, PlanChoices, Service } from './job.ts';
import type { ClimateFile, LogFile, PlanFile, ServiceFile } from './job-file.ts';
import { afterMidnight, clockOf } from './shop-clock.ts';

/** The choices of the day with nothing left open; cm2/min to mm2/min, times of day to minutes after midnight. */
export function measuredPlan(plan: PlanFile | undefined): PlanChoices {
  const { start = null, shiftStart, shiftEnd, breaks = [], coatRate = USUAL_COAT_RATE, minutes } = plan ?? {};
  const from = shiftStart ?? (start === null ? undefined : clockOf(start));
  return {
    start,
    shift:
      from === undefined || shiftEnd === undefined
        ? null
        : { from: afterMidnight(from), to: afterMidnight(shiftEnd) },
    breaks: breaks.map(({ at, minutes }) => ({ at: afterMidnight(at), minutes })),
    coatRate: coatRate * 100,
    minutes: { ...USUAL_STEP_TIMES, ...withoutGaps(minutes ?? {}) },
  };
}

export function measuredClimate(climate: ClimateFile): Climate {
  const { air = null, surface = null, humidity, takenAt = null } = climate;
  return { air, surface, humidity: humidity === undefined ? null : humidity / 100, takenAt };
}

export function measuredService({ solids, grains, concentration, shape }: ServiceFile): Service {
  return {
    solids,
    grains: grains ?? null,
    concentration: concentration ?? null,
    shape: shape ?? null,
  };
}

export function measuredLog(log: LogFile): LogEntry[] {
  return log.map((entry) => ({
    step: entry.step,
    started: entry.started,
    done: entry.done ?? null,
    outcome: entry.outcome ?? null,
    massA: entry.massA ?? null,
    massB: entry.massB ?? null,
    packA: entry.packA ?? '',
    packB: entry.packB ?? '',
    surface: entry.surface ?? null,
    note: entry.note ?? '',
  }));
}

function withoutGaps(times: NonNullable<PlanFile['minutes']>): Partial<PlanChoices['minutes']> {
  return Object.fromEntries(
    Object.entries(times).filter(([name, time]) => name in USUAL_STEP_TIMES && time !== undefined),
  );
}
