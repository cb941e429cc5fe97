import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { JobFile } from '../../geometry/job/job-file.ts';
import { commandResult, faultBeside, goTo, openFile, press, savedJob, savedText, type } from './app.ts';
import { axeFindings, openApp } from './page.ts';

const sample = (name: string): JobFile =>
  JSON.parse(readFileSync(join(import.meta.dirname, `../../samples/${name}.job.json`), 'utf8')) as JobFile;

/** The facing pair with a hole and a thin place in vane 2, and nothing said of its past. */
function thinPair(): string {
  const { history: _, ...job } = sample('facing-pair');
  const pit = { kind: 'pit', face: 'vane-2/pressure', form: 'bowl' } as const;
  const parts = job.parts.map((part) =>
    part.kind === 'impeller'
      ? {
          ...part,
          wear: [
            ...part.wear,
            { ...pit, at: [150, 14], diameter: 14, depth: 7.5 },
            { ...pit, at: [80, 20], diameter: 16, depth: 5.5 },
          ],
        }
      : part,
  );
  return JSON.stringify({ ...job, parts });
}

const walls = (page: Page) => page.getByRole('region', { name: 'Metal left', exact: true });
const past = (page: Page) => page.getByRole('region', { name: 'Wear so far', exact: true });

test('the thinnest wall of each part is on the list and on the map, and says when putty is not enough', async () => {
  const { page } = await openApp();
  const text = thinPair();
  await openFile(page, 'thin.job.json', text);
  await goTo(page, 'Clearance');
  const section = walls(page);
  await section.getByRole('radio', { name: 'impeller' }).click();
  await section.getByRole('img', { name: 'Metal left of impeller, vane 2: worn through' }).waitFor();
  await section.getByText('1 worn through').waitFor();
  await section
    .getByText(/vane 2, pressure side, along 150\smm, height 14\smm is worn through\. Putty alone/)
    .waitFor();

  const { parts } = await commandResult(text);
  const known = parts[1].walls;
  const rows = section.getByRole('list', { name: 'Walls, worst first' }).getByRole('button');
  expect(await rows.count()).toBe(known.length);
  const vane1 = known.find(({ face }) => face.startsWith('vane-1/'));
  const row = rows.filter({ hasText: 'Vane 1' });
  await expect.poll(() => row.textContent()).toContain(`${vane1?.remaining.toFixed(2)} of`);

  const places = section.getByRole('list', { name: 'Thin places' }).getByRole('button');
  expect(await places.count()).toBe(known.find(({ face }) => face.startsWith('vane-2/'))?.places.length);
  await places.nth(1).click();
  expect(await places.nth(1).getAttribute('aria-pressed')).toBe('true');
  expect(await section.locator('.wall-lit').textContent()).toBe('2');

  await row.click();
  await section.getByRole('img', { name: /^Metal left of impeller, vane 1: / }).waitFor();
  expect(await axeFindings(page)).toEqual([]);
});

test('hours and earlier repairs become a rate and a due date, the same as the command says, and are undone step by step', async () => {
  const { page } = await openApp();
  const { history: _, ...job } = sample('gauged-plate');
  await openFile(page, 'past.job.json', JSON.stringify(job));
  await goTo(page, 'Clearance');
  const section = past(page);
  await section.getByText('The hours since the last repair are known').click();
  await type(page, 'Run since the last repair, or since new', '2000');
  const lines = section.getByRole('list', { name: 'Wear rates and due dates' });
  await lines
    .getByText(/one interval: no telling how far off/)
    .first()
    .waitFor();

  await press(section, 'Add an earlier repair');
  await section.getByLabel('Day of repair 1').fill('2024-05-17');
  await type(page, 'Hours before repair 1', '3000');
  await type(page, 'Deepest wear at repair 1', '1/4 in');
  await lines.getByText(/2 intervals, 5000\sh/).waitFor();
  const saved = await savedJob(page);
  expect(saved.history).toEqual({
    hours: 2000,
    repairs: [{ part: job.parts[0].id, date: '2024-05-17', hours: 3000, deepest: 6.35 }],
  });
  const { history } = await commandResult(await savedText(page));
  const [rate] = history?.rates ?? [];
  expect(rate.intervals).toBe(2);
  await lines.getByText(`loses ${rate.per1000.toFixed(2)} mm per 1000`).waitFor();

  await type(page, 'Deepest wear at repair 1', '-3');
  expect(await faultBeside(page, 'Deepest wear at repair 1')).not.toBe('');
  expect((await savedJob(page)).history?.repairs?.[0].deepest).toBe(6.35);
  await page.keyboard.press('Escape');
  await type(page, 'Hours before repair 1', '3500');
  await press(page, /^Undo: an earlier repair/);
  await expect.poll(async () => (await savedJob(page)).history?.repairs?.[0].hours).toBe(3000);
  expect(await axeFindings(page)).toEqual([]);

  await press(section, 'Remove earlier repair 1');
  await lines
    .getByText(/one interval: no telling how far off/)
    .first()
    .waitFor();
  expect((await savedJob(page)).history).toEqual({ hours: 2000 });
});

test('a plate alone and an impeller alone have walls and a past too', async () => {
  const { page } = await openApp();
  for (const name of ['scoured-plate', 'eaten-impeller']) {
    await openFile(page, `${name}.job.json`, JSON.stringify(sample(name)));
    await goTo(page, 'Clearance');
    await walls(page).getByRole('list', { name: 'Walls, worst first' }).waitFor();
    await walls(page)
      .getByRole('img', { name: new RegExp(`^Metal left of ${sample(name).parts[0].id},`) })
      .waitFor();
    await past(page).getByRole('button', { name: 'Add an earlier repair' }).waitFor();
  }
});
