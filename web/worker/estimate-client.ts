/**
 * The figures of the job on the screen, worked out beside it whenever the job changes. The latest job wins; until its answer is
 * there, the last good figures stay, marked as being redone.
 */
import { proxy, wrap } from 'comlink';
import { useStore } from 'zustand/react';
import { createStore } from 'zustand/vanilla';
import type { Fault } from '../../geometry/job/fault.ts';
import type { JobFile } from '../../geometry/job/job-file.ts';
import type { Result } from '../../geometry/sheet/result.ts';
import type { Fraction } from '../../geometry/units.ts';
import { notify } from '../files/notice-store.ts';
import { jobStore } from '../job/job-store.ts';
import { takeSurfaces } from '../wear/read-surfaces.ts';
import type { EstimateAnswer, EstimateNews, EstimateService, FaceRegions } from './estimate-job.ts';

export interface EstimateState {
  /** The last good result, in the file's units; null before the first. */
  readonly result: Result | null;
  readonly regions: readonly FaceRegions[];
  /** The job they belong to. */
  readonly job: JobFile | null;
  /** A newer job is being worked out. */
  readonly pending: boolean;
  /** How far a long kriging is, 0 to 1; null when nothing takes long. */
  readonly progress: Fraction | null;
  /** The printable sheet as an HTML fragment; it follows when the person pauses. Empty before the first. */
  readonly sheet: string;
  /** The sheet is not yet that of the newest job. */
  readonly isSheetPending: boolean;
  /** Why the newest job gave none. */
  readonly faults: readonly Fault[];
  /** What went wrong on our side, in a sentence. */
  readonly error: string | null;
}

export const estimateStore = createStore<EstimateState>()(() => ({
  result: null,
  regions: [],
  job: null,
  pending: false,
  progress: null,
  sheet: '',
  isSheetPending: true,
  faults: [],
  error: null,
}));

export function useEstimate<T>(select: (state: EstimateState) => T): T {
  return useStore(estimateStore, select);
}

/** A worker that can be asked; the answer rejects when it has crashed. */
export interface Estimator {
  ask(job: JobFile, report: (news: EstimateNews) => void): Promise<EstimateAnswer>;
  /** Of the job asked for last. */
  sheet(): Promise<string | null>;
  stop(): void;
}

/** A burst of changes is worked out once, ms. */
const PAUSE = 30;
/** So long without a change, and the sheet is drawn, ms: the next figures would have to wait for it. */
const SHEET_PAUSE = 400;

/** Works out the present job at once and every later one shortly after it comes. @returns stops it */
export function startEstimating(openEstimator: () => Estimator = estimateWorker): () => void {
  let estimator: Estimator | null = null;
  let wanted: JobFile | null = jobStore.getState().job;
  let crashedOn: JobFile | null = null;
  let isBusy = false;
  let timer: ReturnType<typeof setTimeout> | undefined;

  const work = async () => {
    if (isBusy || wanted === null) return;
    const job = wanted;
    wanted = null;
    isBusy = true;
    estimateStore.setState({ pending: true, isSheetPending: true });
    try {
      estimator ??= openEstimator();
      const stopped = new Promise<never>((_, fail) => {
        stopNow = () => fail(STOPPED);
      });
      const answer = await Promise.race([estimator.ask(job, (news) => hear(news, job)), stopped]);
      crashedOn = null;
      estimateStore.setState({ progress: null });
      // Where a newer job waits, this answer is of yesterday's.
      if (wanted === null) {
        show(answer, job);
        timer = setTimeout(() => void drawSheet(estimator), SHEET_PAUSE);
      }
    } catch (reason) {
      estimator?.stop();
      estimator = null;
      estimateStore.setState({ progress: null });
      if (reason === STOPPED) sayStopped();
      else if (crashedOn === job) giveUp();
      else wanted ??= job;
      if (reason !== STOPPED && crashedOn === null) sayStartedAgain();
      crashedOn = reason === STOPPED ? null : job;
    }
    isBusy = false;
    await work();
  };

  const drawSheet = async (by: Estimator | null) => {
    isBusy = true;
    try {
      const sheet = (await by?.sheet()) ?? null;
      if (wanted === null && sheet !== null) estimateStore.setState({ sheet, isSheetPending: false });
    } catch {
      // Without a sheet there are still all the figures, and the next change tries again with a new worker.
      by?.stop();
      if (estimator === by) estimator = null;
    }
    isBusy = false;
    await work();
  };

  const stopWatching = jobStore.subscribe((now, before) => {
    if (now.job === before.job) return;
    wanted = now.job;
    estimateStore.setState({ pending: true, isSheetPending: true });
    clearTimeout(timer);
    timer = setTimeout(() => void work(), PAUSE);
  });
  void work();
  return () => {
    stopWatching();
    clearTimeout(timer);
    wanted = null;
    estimator?.stop();
  };
}

/** A long kriging that is no longer wanted ends; the figures stay those before it until the job changes again. */
export function stopEstimate(): void {
  stopNow();
}

const STOPPED = new Error('stopped by the person');
let stopNow = () => {};

function hear(news: EstimateNews, job: JobFile): void {
  if ('surface' in news) takeSurfaces(job, [news.surface]);
  else if (estimateStore.getState().pending) estimateStore.setState({ progress: news.progress });
}

function show(answer: EstimateAnswer, job: JobFile): void {
  if ('result' in answer) estimateStore.setState({ ...answer, job, pending: false, faults: [], error: null });
  else if ('faults' in answer) estimateStore.setState({ pending: false, faults: answer.faults, error: null });
  else estimateStore.setState({ pending: false, faults: [], error: answer.error });
}

function giveUp(): void {
  const error =
    'The estimate stopped twice at this job. Undo the last change, or close the page and open it again.';
  estimateStore.setState({ pending: false, faults: [], error });
}

function sayStopped(): void {
  const error =
    'Stopped. The figures are those from before the last change; change the job to work them out.';
  estimateStore.setState({ pending: false, faults: [], error });
}

function sayStartedAgain(): void {
  notify({
    name: 'estimate',
    kind: 'note',
    title: 'The estimate stopped and was started again.',
    sentences: ['Your job is as it was. The figures follow.'],
  });
}

function estimateWorker(): Estimator {
  const worker = new Worker(new URL('./estimate.worker.ts', import.meta.url), { type: 'module' });
  const service = wrap<EstimateService>(worker);
  const crash = new Promise<never>((_, fail) => {
    worker.onerror = (event) => fail(new Error(event.message));
    worker.onmessageerror = () => fail(new Error('a message could not be read'));
  });
  // It may come while nothing is asked; the next question then fails.
  crash.catch(() => {});
  return {
    ask: (job, report) => Promise.race([service.estimateJob(job, proxy(report)), crash]),
    sheet: () => Promise.race([service.sheetOfLast(), crash]),
    stop: () => worker.terminate(),
  };
}
