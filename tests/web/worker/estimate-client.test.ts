import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { JobFile } from '../../../geometry/job/job-file.ts';
import type { Result } from '../../../geometry/sheet/result.ts';
import { noticeStore } from '../../../web/files/notice-store.ts';
import { jobStore } from '../../../web/job/job-store.ts';
import {
  type Estimator,
  estimateStore,
  startEstimating,
  stopEstimate,
} from '../../../web/worker/estimate-client.ts';
import type { EstimateAnswer, EstimateNews } from '../../../web/worker/estimate-job.ts';

/** A worker whose answers the test gives by hand. */
interface HandWorker {
  readonly asked: JobFile[];
  stopped: boolean;
  sheets: number;
  sheet(title: string): string;
  answer(answer: EstimateAnswer): void;
  crash(): void;
  tell(news: EstimateNews): void;
}

const workers: HandWorker[] = [];

function openByHand(): Estimator {
  let settle: { answer: (answer: EstimateAnswer) => void; crash: () => void } | null = null;
  const worker: HandWorker = {
    asked: [],
    stopped: false,
    sheets: 0,
    sheet: (title) => `sheet of ${title}`,
    answer: (answer) => settle?.answer(answer),
    crash: () => settle?.crash(),
    tell: () => {},
  };
  workers.push(worker);
  return {
    ask(job, report) {
      worker.asked.push(job);
      worker.tell = report;
      return new Promise((answer, fail) => {
        settle = { answer, crash: () => fail(new Error('out of memory')) };
      });
    },
    sheet: async () => {
      worker.sheets += 1;
      return worker.sheet(worker.asked.at(-1)?.title ?? '');
    },
    stop: () => {
      worker.stopped = true;
    },
  };
}

const good = (name: string): EstimateAnswer => ({ result: { name } as unknown as Result, regions: [] });
const result = (name: string) => ({ result: { name } });
const state = () => estimateStore.getState();
const retitle = (title: string) => jobStore.getState().edit('title', (job) => ({ ...job, title }));
const settle = () => vi.advanceTimersByTimeAsync(100);
const titles = (worker: HandWorker) => worker.asked.map((job) => job.title);

let stop: () => void;

beforeEach(() => {
  vi.useFakeTimers();
  workers.length = 0;
  noticeStore.setState({ notices: [] });
  jobStore.setState(jobStore.getInitialState(), true);
  estimateStore.setState(estimateStore.getInitialState(), true);
  stop = startEstimating(openByHand);
});
afterEach(() => {
  stop();
  vi.useRealTimers();
});

describe('the estimate beside the screen', () => {
  it('asks for the job on the screen at once and shows the answer', async () => {
    expect(workers[0].asked).toEqual([jobStore.getState().job]);
    expect(state().pending).toBe(true);
    workers[0].answer(good('first'));
    await settle();
    expect(state()).toMatchObject({
      ...result('first'),
      pending: false,
      job: jobStore.getState().job,
      error: null,
    });
  });

  it('works a burst of changes out once', async () => {
    workers[0].answer(good('first'));
    await settle();
    for (const title of ['a', 'b', 'c']) retitle(title);
    await settle();
    expect(titles(workers[0])).toEqual(['', 'c']);
  });

  it('never shows the answer of an older job, and keeps the last good one until the new one is there', async () => {
    workers[0].answer(good('first'));
    await settle();
    retitle('a');
    await settle();
    retitle('b');
    expect(state()).toMatchObject({ ...result('first'), pending: true });
    workers[0].answer(good('of a'));
    await settle();
    expect(state()).toMatchObject({ ...result('first'), pending: true });
    workers[0].answer(good('of b'));
    await settle();
    expect(state()).toMatchObject({ ...result('of b'), pending: false });
    expect(titles(workers[0])).toEqual(['', 'a', 'b']);
  });

  it('shows how far a long kriging is, and no more once the answer is there', async () => {
    workers[0].tell({ progress: 0.4 });
    expect(state().progress).toBe(0.4);
    workers[0].answer(good('first'));
    await settle();
    expect(state().progress).toBeNull();
  });

  it('stopped: the worker ends, the last good figures stay, and the next change starts a new one', async () => {
    workers[0].answer(good('first'));
    await settle();
    retitle('a');
    await settle();
    workers[0].tell({ progress: 0.4 });
    stopEstimate();
    await settle();
    expect(workers[0].stopped).toBe(true);
    expect(state()).toMatchObject({ ...result('first'), pending: false, progress: null });
    expect(state().error).toContain('Stopped');
    expect(workers).toHaveLength(1);
    retitle('b');
    await settle();
    workers[1].answer(good('of b'));
    await settle();
    expect(state()).toMatchObject({ ...result('of b'), error: null });
    expect(noticeStore.getState().notices).toEqual([]);
  });

  it('shows faults beside the last good figures', async () => {
    workers[0].answer(good('first'));
    await settle();
    retitle('a');
    await settle();
    const faults = [{ field: 'parts', found: 'a', needs: 'b' }];
    workers[0].answer({ faults });
    await settle();
    expect(state()).toMatchObject({ ...result('first'), faults, pending: false });
    retitle('b');
    await settle();
    workers[0].answer({ error: 'The cells are too fine.' });
    await settle();
    expect(state()).toMatchObject({ ...result('first'), faults: [], error: 'The cells are too fine.' });
  });
});

describe('the sheet', () => {
  it('follows when the person pauses, and is marked until then', async () => {
    workers[0].answer(good('first'));
    await settle();
    expect(state()).toMatchObject({ sheet: '', isSheetPending: true, pending: false });
    await vi.advanceTimersByTimeAsync(1000);
    expect(state()).toMatchObject({ sheet: 'sheet of ', isSheetPending: false });

    retitle('a');
    expect(state()).toMatchObject({ sheet: 'sheet of ', isSheetPending: true });
    await settle();
    workers[0].answer(good('of a'));
    await vi.advanceTimersByTimeAsync(1000);
    expect(state()).toMatchObject({ sheet: 'sheet of a', isSheetPending: false });
  });

  it('is not drawn for jobs the person has passed', async () => {
    for (const title of ['a', 'b', 'c']) {
      workers[0].answer(good(title));
      await settle();
      retitle(title);
      await settle();
    }
    expect(workers[0].sheets).toBe(0);
  });

  it('that cannot be drawn leaves the figures, and the next change tries again', async () => {
    workers[0].sheet = () => {
      throw new Error('no room');
    };
    workers[0].answer(good('first'));
    await vi.advanceTimersByTimeAsync(1000);
    expect(state()).toMatchObject({ ...result('first'), pending: false, error: null, sheet: '' });
    retitle('a');
    await settle();
    workers[1].answer(good('of a'));
    await vi.advanceTimersByTimeAsync(1000);
    expect(state()).toMatchObject({ ...result('of a'), sheet: 'sheet of a' });
  });
});

describe('a worker that crashes', () => {
  it('is started again once, with a sentence, and asked the same', async () => {
    workers[0].crash();
    await settle();
    expect(workers).toHaveLength(2);
    expect(workers[0].stopped).toBe(true);
    expect(workers[1].asked).toEqual(workers[0].asked);
    expect(noticeStore.getState().notices.map((notice) => notice.title)).toEqual([
      'The estimate stopped and was started again.',
    ]);
    workers[1].answer(good('after all'));
    await settle();
    expect(state()).toMatchObject({ ...result('after all'), pending: false, error: null });
  });

  it('twice at one job is not asked again until the job is another', async () => {
    workers[0].crash();
    await settle();
    workers[1].crash();
    await settle();
    expect(workers).toHaveLength(2);
    expect(state().pending).toBe(false);
    expect(state().error).toContain('stopped twice');

    retitle('another');
    await settle();
    expect(titles(workers[2])).toEqual(['another']);
    workers[2].answer(good('other'));
    await settle();
    expect(state()).toMatchObject({ ...result('other'), error: null });
  });

  it('is asked for the newest job when it changed meanwhile', async () => {
    retitle('newest');
    workers[0].crash();
    await settle();
    expect(titles(workers[1])).toEqual(['newest']);
  });

  it('cannot be opened at all: says so and leaves the rest alone', async () => {
    stop();
    stop = startEstimating(() => {
      throw new Error('no workers here');
    });
    await settle();
    expect(state().error).toContain('stopped twice');
  });
});
