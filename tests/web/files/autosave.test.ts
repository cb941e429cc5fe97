import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { JobFile } from '../../../geometry/job/job-file.ts';
import { writeJob } from '../../../geometry/job/write-job.ts';
import { type Autosave, keepStore, startAutosave } from '../../../web/files/autosave.ts';
import type { KeptAt, KeptHead } from '../../../web/files/kept-job.ts';
import { noticeStore } from '../../../web/files/notice-store.ts';
import { type Found, findKept, offerOther } from '../../../web/files/restore-job.ts';
import { jobStore } from '../../../web/job/job-store.ts';
import { type MemoryShelf, memoryShelf } from './memory-shelf.ts';

const start = jobStore.getInitialState();
const state = () => jobStore.getState();
const retitle = (title: string) => state().edit('title', (job: JobFile) => ({ ...job, title }));
const notices = () => noticeStore.getState().notices.map((notice) => notice.name);

let shelf: MemoryShelf;
let leave: () => void;
const running: Autosave[] = [];

/** A visit: a fresh page that takes up `found` and keeps its job in `slot`. */
function visit(slot: string, found: Found | null = null): Autosave {
  for (const autosave of running.splice(0)) autosave.stop();
  jobStore.setState({ ...start, ...found?.kept, savedAt: found?.head.savedAt ?? null }, true);
  const whenLeaving = (flush: () => void) => {
    leave = flush;
    return () => {};
  };
  const autosave = startAutosave(shelf, found === null ? [] : [found.head], { slot, whenLeaving });
  running.push(autosave);
  return autosave;
}

beforeEach(() => {
  vi.useFakeTimers({ now: 1_700_000_000_000 });
  shelf = memoryShelf();
  keepStore.setState({ state: 'on' });
  noticeStore.setState({ notices: [] });
});
afterEach(() => {
  for (const autosave of running.splice(0)) autosave.stop();
  vi.useRealTimers();
});

describe('keeping', () => {
  it('writes nothing until something changes', async () => {
    visit('a');
    await vi.advanceTimersByTimeAsync(10_000);
    leave();
    expect(shelf.slots.size).toBe(0);
    expect(state().savedAt).toBeNull();
  });

  it('keeps a change within a second, however many follow', async () => {
    visit('a');
    for (let i = 0; i < 10; i++) {
      retitle(`title ${i}`);
      await vi.advanceTimersByTimeAsync(100);
    }
    expect(shelf.slots.get('a')?.head.title).toMatch(/^title \d$/);
    await vi.advanceTimersByTimeAsync(1000);
    expect(shelf.slots.get('a')?.head.title).toBe('title 9');
    // Ten changes over a second are a few writes, not ten.
    expect(shelf.slots.get('a')?.head.writes).toBeLessThanOrEqual(3);
    expect(keepStore.getState().state).toBe('on');
    expect(state().savedAt).toBeGreaterThan(1_700_000_000_000);
  });

  it('keeps at once when the page is left', async () => {
    visit('a');
    retitle('left');
    expect(keepStore.getState().state).toBe('pending');
    leave();
    await vi.advanceTimersByTimeAsync(0);
    expect(shelf.slots.get('a')?.head.title).toBe('left');
  });

  it('an undo is a change like any other', async () => {
    visit('a');
    retitle('one');
    await vi.advanceTimersByTimeAsync(1000);
    state().undo();
    await vi.advanceTimersByTimeAsync(1000);
    const found = await findKept(shelf);
    expect(found?.kept.past).toHaveLength(0);
    expect(found?.kept.future).toHaveLength(1);
  });
});

describe('the next visit', () => {
  it('finds the same job with its whole undo list, and undoes to the same bytes', async () => {
    const first = writeJob(start.job);
    visit('a');
    for (const title of ['one', 'two', 'three']) retitle(title);
    state().undo();
    const last = writeJob(state().job);
    await vi.advanceTimersByTimeAsync(1000);

    visit('b', await findKept(shelf));
    expect(writeJob(state().job)).toBe(last);
    state().redo();
    expect(state().job.title).toBe('three');
    for (let i = 0; i < 3; i++) state().undo();
    expect(writeJob(state().job)).toBe(first);
  });

  it('finds jobs that still share what no step changed', async () => {
    visit('a');
    retitle('one');
    await vi.advanceTimersByTimeAsync(1000);
    const found = await findKept(shelf);
    expect(found?.kept.past[0].job.parts).toBe(found?.kept.job.parts);
  });

  it('clears the slot it goes on from once its own is written', async () => {
    visit('a');
    retitle('one');
    await vi.advanceTimersByTimeAsync(1000);
    visit('b', await findKept(shelf));
    expect([...shelf.slots.keys()]).toEqual(['a']);
    retitle('two');
    await vi.advanceTimersByTimeAsync(1000);
    expect([...shelf.slots.keys()]).toEqual(['b']);
  });

  it('clears it later when the page was closed in between', async () => {
    visit('a');
    retitle('one');
    await vi.advanceTimersByTimeAsync(1000);
    const older = shelf.slots.get('a');
    visit('b', await findKept(shelf));
    retitle('two');
    await vi.advanceTimersByTimeAsync(1000);
    if (older !== undefined) shelf.slots.set('a', older);
    const found = await findKept(shelf);
    expect([found?.kept.job.title, found?.others]).toEqual(['two', []]);
    expect([...shelf.slots.keys()]).toEqual(['b']);
  });
});

describe('two tabs', () => {
  it('a tab left open that goes on working is not written over, and is offered the next time', async () => {
    visit('a');
    retitle('first');
    await vi.advanceTimersByTimeAsync(1000);
    const found = await findKept(shelf);
    visit('b', found);
    // Meanwhile the first tab changes its job once more.
    const kept = shelf.slots.get('a');
    const goneOn: KeptHead = { slot: 'a', writes: 2, title: 'first, gone on', savedAt: Date.now(), from: [] };
    shelf.slots.set('a', {
      head: goneOn,
      value: { ...Object(kept?.value), job: { ...start.job, title: 'first, gone on' } },
    });
    await vi.advanceTimersByTimeAsync(1000);
    retitle('second');
    await vi.advanceTimersByTimeAsync(1000);

    const next = await findKept(shelf);
    expect(next?.kept.job.title).toBe('second');
    expect(next?.others.map((head) => head.title)).toEqual(['first, gone on']);

    const autosave = visit('c', next);
    const opened: KeptAt[] = [];
    offerOther(shelf, next?.others ?? [], (at) => {
      opened.push(at);
      autosave.goOnFrom(at);
    });
    const [offer] = noticeStore.getState().notices;
    expect(offer.title).toContain('first, gone on');
    offer.action?.run();
    await vi.advanceTimersByTimeAsync(1000);
    expect(state().job.title).toBe('first, gone on');
    state().undo();
    expect(state().job.title).toBe('second');
    await vi.advanceTimersByTimeAsync(1000);
    // Both are in one undo list now, so one slot is enough.
    expect([...shelf.slots.keys()]).toEqual(['c']);
  });
});

describe('a device that refuses', () => {
  it('says once that the job is not kept, and keeps it as soon as it can', async () => {
    visit('a');
    shelf.isBlocked = true;
    retitle('one');
    await vi.advanceTimersByTimeAsync(1000);
    expect(keepStore.getState().state).toBe('off');
    expect(notices()).toEqual(['autosave']);
    expect(state().job.title).toBe('one');

    shelf.isBlocked = false;
    retitle('two');
    await vi.advanceTimersByTimeAsync(1000);
    expect(keepStore.getState().state).toBe('on');
    expect(notices()).toEqual([]);
    expect(shelf.slots.get('a')?.head.title).toBe('two');
  });
});

describe('a kept job that cannot be read', () => {
  const keep = (slot: string, value: unknown, savedAt = 1) =>
    shelf.slots.set(slot, { head: { slot, writes: 1, title: slot, savedAt, from: [] }, value });
  const good = { version: 1, job: start.job, past: [], future: [], fileName: null, fileSavedAt: null };

  it.each<[string, unknown]>([
    ['nothing', undefined],
    ['text', 'rubbish'],
    ['another version', { ...good, version: 2 }],
    ['no job', { ...good, job: null }],
    ['a job with a fault', { ...good, job: { ...start.job, parts: [] } }],
    ['a newer format', { ...good, job: { ...start.job, format: 2 } }],
  ])('%s: set aside with a sentence, and the next newest is taken', async (_, value) => {
    keep('good', good, 1);
    keep('bad', value, 2);
    const found = await findKept(shelf);
    expect(found?.head.slot).toBe('good');
    expect(shelf.aside).toEqual([value]);
    expect(notices()).toEqual(['set-aside']);
    expect(noticeStore.getState().notices[0].sentences.every((sentence) => sentence !== '')).toBe(true);
  });

  it('a broken undo list is left out, the job stays', async () => {
    keep('a', { ...good, past: [{ label: 3 }] });
    const found = await findKept(shelf);
    expect([found?.kept.job, found?.kept.past]).toEqual([start.job, []]);
  });

  it('none at all is no fault', async () => {
    expect(await findKept(shelf)).toBeNull();
    expect(notices()).toEqual([]);
  });
});
