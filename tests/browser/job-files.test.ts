import { expect, test } from 'vitest';
import { newPlateJob } from '../../geometry/job/new-plate-job.ts';
import { writeJob } from '../../geometry/job/write-job.ts';
import { dropFile, figures, notices, openFile, press, savedText } from './app.ts';
import { openApp } from './page.ts';
import { expectMarks } from './pictures.ts';

const job = newPlateJob();
const good = writeJob({
  ...job,
  title: 'Dropped plate',
  parts: job.parts.map((part) => ({
    ...part,
    wear: [{ kind: 'pit', face: 'face', at: [100, 45], diameter: 20, depth: 4, form: 'bowl' }],
  })),
});

const BROKEN: readonly { name: string; text: string; says: RegExp }[] = [
  { name: 'half.job.json', text: good.slice(0, good.length / 2), says: /cut short at line \d+/ },
  { name: 'later.job.json', text: good.replace('"format": 1', '"format": 2'), says: /format.*2/ },
  {
    name: 'bore.job.json',
    text: good.replace('"boreDiameter": 120', '"boreDiameter": 330'),
    says: /parts\[0\]\.boreDiameter: 330 is not smaller than outerDiameter 300/,
  },
  { name: 'letter.txt', text: 'Dear fitter, the plate is worn.', says: /not JSON|is not a job/i },
];

test('a broken file gives a sentence and leaves the job as it was', async () => {
  const { page } = await openApp();
  const before = await savedText(page);
  const shown = await figures(page);
  for (const { name, text, says } of BROKEN) {
    expect(text).not.toBe(good);
    await openFile(page, name, text);
    await expect.poll(() => notices(page)).toContain(`${name} was not opened. Your job is as it was.`);
    expect(await notices(page)).toMatch(says);
    expect(await savedText(page), name).toBe(before);
  }
  expect(await figures(page)).toEqual(shown);

  // A good file takes the sentence away.
  await openFile(page, 'good.job.json', good);
  await expectMarks(page, 1);
  await expect.poll(() => notices(page)).toBe('');
});

test('a file dropped on the window is opened, and undo brings the old job back', async () => {
  const { page } = await openApp();
  const before = await savedText(page);
  const shown = await figures(page);
  await dropFile(page, 'dropped.job.json', good);
  await expectMarks(page, 1);
  expect((await figures(page))['Deepest wear']).toBe('4.00 mm');
  expect(await savedText(page)).toBe(good);

  await dropFile(page, 'letter.txt', 'Dear fitter');
  await expect.poll(() => notices(page)).toContain('letter.txt was not opened.');
  expect(await savedText(page)).toBe(good);

  await press(page, 'Undo: Open dropped.job.json');
  expect(await figures(page)).toEqual(shown);
  expect(await savedText(page)).toBe(before);
  await press(page, 'Redo: Open dropped.job.json');
  expect(await savedText(page)).toBe(good);
});
