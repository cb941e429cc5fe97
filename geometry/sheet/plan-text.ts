import type { PlanStepResult } from './day-result.ts';
import { betweenText, dayAndClock, durationText, momentText } from './duration.ts';
import { counted, figure } from './figure.ts';
import type { Result } from './result.ts';

export const PLAN_HEADS = ['when', 'step', '>takes', 'not before and not after', 'note'];

/** One row a step; the day stands before the first step of each. Waiting stands in brackets. */
export function planRows({ parts, plan, day }: Result): string[][] {
  return plan.map((step, i) => {
    const before = i === 0 ? undefined : plan[i - 1].start;
    return [
      whenText(day.start, step, before),
      nameText(step, parts.length),
      durationText(step.minutes),
      step.window === null ? '' : betweenText(day.start, step.window, step.start),
      [step.note, troubleText(step)].filter((text) => text !== '').join(' '),
    ];
  });
}

/** With its parts, unless it is done on all there are; waiting in brackets. */
function nameText({ step, parts, hands }: PlanStepResult, count: number): string {
  const name = ofParts({ step, parts }, count);
  return hands ? name : `(${name})`;
}

function ofParts({ step, parts }: Pick<PlanStepResult, 'step' | 'parts'>, count: number): string {
  return parts.length === count ? step : `${step}: ${parts.join(', ')}`;
}

function whenText(start: string | null, step: PlanStepResult, before: number | undefined): string {
  if (start === null) return momentText(null, step.start);
  return before === undefined
    ? (dayAndClock(start, step.start) ?? '')
    : momentText(start, step.start, before);
}

/** What could not be had, in words; empty when all could. */
function troubleText({ trouble }: Pick<PlanStepResult, 'trouble'>): string {
  if (trouble === 'outside-shift') return 'Outside working hours.';
  return trouble === 'window-missed' ? 'Its window is missed.' : '';
}

/** How long it all takes, and what it would take in a colder and in a warmer shop. */
export function dayLines({ plan, day, filler }: Result): string[] {
  if (plan.length === 0) return [];
  const mixes = counted(filler.batches.length, 'mix', 'mixes');
  return [
    `Hands-on ${durationText(day.handsOn)}, ${endText(day.start, day.end)}, ${mixes}. Brackets: waiting.`,
    ...day.elsewhere.map(
      ({ surface, mixes: count, end, handsOn }) =>
        `With the part at ${surface} degC: ${counted(count, 'mix', 'mixes')}, hands-on ${durationText(handsOn)}, ${endText(day.start, end)}.`,
    ),
  ];
}

function endText(start: string | null, end: number): string {
  const moment = dayAndClock(start, end);
  return moment === null ? `done after ${durationText(end)}` : `done ${moment}`;
}

/** Go or wait, and why. */
export function climateLines({ climate, advice }: Result): string[] {
  const lines: string[] = [];
  if (climate !== null) {
    const { dewPoint, margin, fit, reasons, changes } = climate;
    lines.push(
      `${fit ? 'Fit to fill and coat' : 'Wait'}: dew point ${dewPoint.toFixed(1)} degC, the part ${Math.abs(margin).toFixed(1)} degC ${margin < 0 ? 'below' : 'above'} it (at least 3 wanted).`,
    );
    if (!fit) lines.push(`${sentence(reasons.join('; '))}. ${changes.join(' ')}`);
  }
  if (advice !== null) {
    lines.push(
      `Advice: service ${advice.severity.replaceAll('-', ' ')}, ${advice.putty === 'coarse-bead' ? 'a putty with coarse ceramic beads' : 'a fine paste'}. ${advice.reasons.join(' ')} [${advice.source}]`,
    );
  }
  return lines;
}

/** What a wet film comb shows at the film to aim at. Teeth 25 um apart, common practice. */
export function combWords({ wet, dry }: Result['coat']['comb']): string {
  return wet === 0
    ? `On a wet film comb even the ${dry} um tooth stays dry.`
    : `On a wet film comb the ${wet} um tooth wets, the ${dry} stays dry.`;
}

/** What to aim at with the brush, and what the comb is to show. */
export function combText({ wetFilm, comb, lostShare }: Result['coat']): string {
  return (
    `Aim at ${figure(wetFilm)} um wet. ${combWords(comb)} ` +
    `The first coat pays the blast profile and the wear left to it. Waste on top of the need is ${(100 * lostShare).toFixed(1)} % of what is mixed.`
  );
}

export const LOG_HEADS = ['begun', 'done', 'step', '>A g', '>B g', 'pack A', 'pack B', 'note'];

const OUTCOMES = { skipped: 'skipped', discarded: 'thrown away' } as const;

/** What was done when, in the clock of the place it was done at. */
export function logRows({ log, plan, parts }: Result): string[][] {
  const names = new Map(plan.map((planned) => [planned.id, ofParts(planned, parts.length)]));
  return log.map(({ step, started, done, massA, massB, packA, packB, surface, note, outcome }) => [
    stampText(started),
    done === null ? '' : stampText(done).slice('2026-12-01 '.length),
    names.get(step) ?? step,
    massA === null ? '' : figure(massA),
    massB === null ? '' : figure(massB),
    packA,
    packB,
    [
      outcome === null ? '' : OUTCOMES[outcome],
      surface === null ? '' : `part at ${figure(surface)} degC`,
      note,
    ]
      .filter((text) => text !== '')
      .join(', '),
  ]);
}

/** `2026-12-01 09:12` of `2026-12-01T09:12:30+01:00`. */
function stampText(instant: string): string {
  return instant.slice(0, '2026-12-01T09:12'.length).replace('T', ' ');
}

const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
