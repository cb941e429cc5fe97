import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { newPlateJob } from '../../../geometry/job/new-plate-job.ts';
import { writeJob } from '../../../geometry/job/write-job.ts';
import { noticeStore } from '../../../web/files/notice-store.ts';
import { openFile, openText } from '../../../web/files/open-job.ts';
import { nameFor, saveJob } from '../../../web/files/save-job.ts';
import { jobStore } from '../../../web/job/job-store.ts';
import { viewStore } from '../../../web/view/view-store.ts';

const start = jobStore.getInitialState();
const state = () => jobStore.getState();
const notices = () => noticeStore.getState().notices;

beforeEach(() => {
  jobStore.setState(start, true);
  noticeStore.setState({ notices: [] });
});
afterEach(() => vi.unstubAllGlobals());

const fileOf = (text: string, name = 'mine.job.json') => new File([text], name);

describe('opening a file', () => {
  it('puts the job on the screen; undo brings the one before back', async () => {
    const text = writeJob({ ...newPlateJob(), title: 'From a file' });
    expect(await openFile(fileOf(text))).toBe(true);
    expect(writeJob(state().job)).toBe(text);
    expect(state().fileName).toBe('mine.job.json');
    expect(state().past.map((step) => step.label)).toEqual(['Open mine.job.json']);
    state().undo();
    expect(state().job).toBe(start.job);
  });

  it('clears what fields of the other job held', async () => {
    viewStore.getState().set({ drafts: { 'parts[0].thickness': 'x' }, selectedMark: 3, part: 'other' });
    await openFile(fileOf(writeJob(newPlateJob())));
    expect(viewStore.getState()).toMatchObject({ drafts: {}, selectedMark: null, part: 'plate' });
  });

  it('keeps fields we do not know', () => {
    openText(JSON.stringify({ ...newPlateJob(), shelf: { row: 4 } }), 'a.job.json');
    expect(JSON.parse(writeJob(state().job))).toHaveProperty('shelf', { row: 4 });
  });
});

describe('a file that is refused changes nothing and says why', () => {
  const job = newPlateJob();
  it.each<[string, string, RegExp]>([
    ['text', 'hello', /not JSON/],
    ['nothing', '', /empty/],
    ['a file cut short', writeJob(job).slice(0, 200), /cut short/],
    ['format 2', JSON.stringify({ ...job, format: 2 }), /newer than this version/],
    [
      'a bore larger than the plate',
      JSON.stringify(job).replace('"boreDiameter":120', '"boreDiameter":330'),
      /330/,
    ],
    ['a list', '[]', /is not a job/],
  ])('%s', async (_, text, sentence) => {
    expect(await openFile(fileOf(text, 'bad.job.json'))).toBe(false);
    expect(state()).toBe(start);
    expect(notices()).toHaveLength(1);
    expect(notices()[0].title).toBe('bad.job.json was not opened. Your job is as it was.');
    expect(notices()[0].sentences.join(' ')).toMatch(sentence);
  });

  it('a file of 50 MB, without reading it', async () => {
    const text = vi.fn<() => Promise<string>>();
    expect(await openFile({ name: 'scan.stl', size: 50_000_000, text })).toBe(false);
    expect(text).not.toHaveBeenCalled();
    expect(notices()[0].sentences).toEqual(['file: 50 MB is not smaller than 50 MB']);
  });

  it('a file that cannot be read at all', async () => {
    const text = () => Promise.reject(new DOMException('gone', 'NotFoundError'));
    expect(await openFile({ name: 'gone.json', size: 10, text })).toBe(false);
    expect(state()).toBe(start);
    expect(notices()[0].sentences[0]).toContain('could not be read');
  });

  it('with a thousand faults, the first twenty and how many more', () => {
    const wear = Array.from({ length: 100 }, () => ({ kind: 'pit', face: 'nowhere' }));
    openText(JSON.stringify({ ...job, parts: [{ ...job.parts[0], wear }] }), 'bad.job.json');
    expect(notices()[0].sentences).toHaveLength(21);
    expect(notices()[0].sentences.at(-1)).toMatch(/^And \d+ more\.$/);
  });

  it('the notice goes when a file opens after all', () => {
    openText('hello', 'bad.job.json');
    openText(writeJob(job), 'good.job.json');
    expect(notices()).toEqual([]);
  });
});

describe('saving', () => {
  /** A file picker that writes into memory. */
  function stubPicker() {
    const saved: { name: string; text: string }[] = [];
    vi.stubGlobal('window', {
      showSaveFilePicker: async ({ suggestedName }: { suggestedName: string }) => ({
        name: suggestedName,
        createWritable: async () => ({
          write: async (text: string) => saved.push({ name: suggestedName, text }),
          close: async () => {},
        }),
      }),
    });
    return saved;
  }

  it('and opening again gives the same job, byte for byte', async () => {
    const saved = stubPicker();
    state().edit('title', (job) => ({ ...job, title: 'Suction plate, pump 4' }));
    expect(await saveJob()).toBe(true);
    expect(saved[0].name).toBe('suction-plate-pump-4.job.json');
    expect(state().fileName).toBe('suction-plate-pump-4.job.json');
    expect(state().fileSavedAt).not.toBeNull();

    const job = state().job;
    jobStore.setState(start, true);
    await openFile(fileOf(saved[0].text));
    expect(state().job).toEqual(job);
    expect(writeJob(state().job)).toBe(saved[0].text);
  });

  it('thought better of is no fault and changes nothing', async () => {
    vi.stubGlobal('window', {
      showSaveFilePicker: () => Promise.reject(new DOMException('the person closed it', 'AbortError')),
    });
    expect(await saveJob()).toBe(false);
    expect(state()).toBe(start);
    expect(notices()).toEqual([]);
  });

  it('that fails says so and keeps the job', async () => {
    vi.stubGlobal('window', {
      showSaveFilePicker: async () => ({
        createWritable: () => Promise.reject(new Error('The disc is full.')),
      }),
    });
    expect(await saveJob()).toBe(false);
    expect(state()).toBe(start);
    expect(notices()[0].sentences).toContain('The disc is full.');
  });

  it.each([
    ['Suction plate, pump 4', 'suction-plate-pump-4.job.json'],
    ['Plåt Ø320', 'plat-ø320.job.json'],
    ['../../etc', 'etc.job.json'],
    ['', 'plate.job.json'],
    ['???', 'plate.job.json'],
  ])('title "%s" makes the file name %s', (title, name) => {
    expect(nameFor({ ...newPlateJob(), title })).toBe(name);
  });
});
