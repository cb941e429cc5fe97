import type { JobFile } from '../../../geometry/job/job-file.ts';
import type { Instant } from '../../../geometry/units.ts';
import { unlockAlarm } from '../../bench/alarm.ts';
import { benchStore, stampTime } from '../../bench/bench-store.ts';
import { eastOfUtc, instantOf } from '../../bench/instant.ts';
import { binMix, finishStep, type MixNotes, skipStep, startStep } from '../../bench/step-log.ts';
import { draftOf, dropWeighed } from '../../bench/weighed-draft.ts';
import { jobStore } from '../../job/job-store.ts';
import { readClocks } from './use-bench-time.ts';

/** What a press does to the log; each is one step of the undo list. `words` names the step. */
export const benchPress = {
  start(step: string, words: string, notes: MixNotes) {
    stamp(step, `start of ${words}`, (job, at) => startStep(job, step, at, notes));
    // Two may be begun at once: this is the one in hand.
    benchStore.getState().set({ taken: step });
  },
  done(step: string, words: string, notes: MixNotes) {
    stamp(step, `end of ${words}`, (job, at) => finishStep(job, step, at, notes));
    followPlan();
  },
  skip(step: string, words: string) {
    stamp(step, `skipping ${words}`, (job, at) => skipStep(job, step, at));
    followPlan();
  },
  /** The step stays in hand: it has to be mixed again. */
  bin(step: string, words: string) {
    stamp(step, `throwing away ${words}`, (job, at) => binMix(job, step, at));
  },
};

/** A second press on the same spot so soon is the glove's bounce, ms; on Done it would end the next step too. */
const BOUNCE = 700;
let pressed = { label: '', at: -Infinity };

/** True for a press that counts. @param button  what the button is called, whatever step it is for */
export function isPress(button: string): boolean {
  const { mono } = readClocks();
  const isBounce = pressed.label === button && mono - pressed.at < BOUNCE;
  pressed = { label: button, at: mono };
  return !isBounce;
}

function stamp(step: string, label: string, change: (job: JobFile, at: Instant) => JobFile): void {
  unlockAlarm();
  const now = stampTime(readClocks);
  const at = instantOf(now, eastOfUtc(now));
  const { job, edit } = jobStore.getState();
  edit(label, (before) => change(before, at));
  dropWeighed(draftOf(job.title, step));
}

function followPlan(): void {
  benchStore.getState().set({ taken: null });
}
