import type { ClockNews } from './bench-clock.ts';
import { clockText, timeText } from './instant.ts';
import type { Lateness } from './lateness.ts';
import type { BenchTimer } from './timers.ts';

/** What each time means, in a sentence. `clock` shows a moment of bench time as the device's clock has it. */
export function timerWords({ kind, phase, span, moment, closes }: BenchTimer, clock: Clock): string {
  switch (phase) {
    case 'running':
      return `Place it within ${timeText(span)}`;
    case 'ending':
      return `${timeText(span)} left. Finish placing it`;
    case 'over':
      return `Time is up since ${timeText(span)}. Place no more of it`;
    case 'early':
      return kind === 'dress'
        ? `Too soft to dress. Ready at ${clock(moment)}`
        : `Too soft for the next coat. Ready at ${clock(moment)}`;
    case 'open':
    case 'closing': {
      const work = kind === 'dress' ? 'Dress it now' : 'Put the next coat on now';
      return `${work}. ${timeText(span)} left, until ${clock(closes ?? moment)}`;
    }
    case 'closed':
      return kind === 'dress'
        ? `Too late to dress it soft, since ${timeText(span)}. Let it harden and grind it`
        : `Too late for the next coat, since ${timeText(span)}. Let it harden and abrade it first`;
    case 'waiting':
      return `Wait until ${clock(moment)}`;
    case 'passed':
      return `Ready since ${clock(moment)}`;
  }
}

/** What is said aloud when a time comes to its next turn; null where the turn is worth no word. */
export function turnWords(timer: BenchTimer, clock: Clock): string | null {
  const { name, kind, phase, span, closes, moment } = timer;
  switch (phase) {
    case 'ending':
      return `${name}: ${timeText(span)} left.`;
    case 'over':
      return span < JUST_NOW ? `${name}: time is up.` : `${name}: time is up since ${timeText(span)}.`;
    case 'open':
      return kind === 'dress'
        ? `${name} is firm: dress it now, until ${clock(closes ?? moment)}.`
        : `${name} is ready for the next coat, until ${clock(closes ?? moment)}.`;
    case 'closing':
      return kind === 'dress'
        ? `${name}: ${timeText(span)} left to dress it.`
        : `${name}: ${timeText(span)} left for the next coat.`;
    case 'closed': {
      const work = kind === 'dress' ? 'dress it soft' : 'put the next coat on';
      return span < JUST_NOW
        ? `${name}: too late to ${work}.`
        : `${name}: too late to ${work}, since ${timeText(span)}.`;
    }
    case 'passed':
      return span < JUST_NOW ? `${name}: the wait is over.` : null;
    case 'running':
    case 'early':
    case 'waiting':
      return null;
  }
}

/** Of a moment of bench time, as the device's clock shows it. */
export type Clock = (moment: number) => string;

/** A turn that is noticed within this is told as happening now, ms. */
const JUST_NOW = 60_000;

/** @param isMixing  a mix is in the bowl */
export function clockWords({ kind, by }: ClockNews, isMixing: boolean): string {
  const check = isMixing ? ' Check the mix.' : '';
  switch (kind) {
    case 'back':
      return `The clock was set back by ${timeText(by)}. The times here go on as if it had not been.`;
    case 'on':
      return `The clock went on by ${timeText(by)}: the device slept or was set.${check}`;
    case 'away':
      return `This page was closed for ${timeText(by)}.${check}`;
  }
}

/** `12 min late`, or how long its window has been closed. */
export function lateWords({ against, by }: Lateness): string {
  return against === 'plan' ? `${timeText(by)} late` : `Its window closed ${timeText(by)} ago`;
}

/** A moment of the calendar on that day's clock. */
export const clockOn =
  (wall: number, back: number): Clock =>
  (moment) =>
    clockText(moment - back, wall);
