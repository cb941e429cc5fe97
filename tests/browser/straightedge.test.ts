import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { JobFile } from '../../geometry/job/job-file.ts';
import { field, goTo, openFile, press, savedJob, startOwn, type } from './app.ts';
import { axeFindings, DEVICES, dragFinger, openApp } from './page.ts';
import { drawAlong, pressAlong, ring, takeTool } from './pictures.ts';

/** A plate of 320 mm with a groove of 3 mm from radius 100 to 120, all round. */
const GROOVED: JobFile = {
  format: 1,
  parts: [
    {
      id: 'plate',
      kind: 'wear-plate',
      density: 7.2,
      outerDiameter: 320,
      boreDiameter: 120,
      thickness: 18,
      wear: [{ kind: 'patch', face: 'face', first: [100, 120], second: [0, 360], depth: 3 }],
    },
  ],
};

const openGrooved = (page: Page) => openFile(page, 'grooved.job.json', JSON.stringify(GROOVED));
const plot = (page: Page) => page.getByRole('img', { name: /^Section under the straightedge/ });
const figure = async (page: Page, label: string): Promise<string> =>
  (await page.locator('.section-figures div').filter({ hasText: label }).locator('dd').textContent()) ?? '';
/** What is said above and below the plot. */
const words = async (page: Page) => (await page.locator('.section-screen > p').allTextContents()).join(' ');
const sections = async (page: Page) => (await savedJob(page)).parts[0].sections;
const lay = (page: Page, how: string) => page.locator('.choice').filter({ hasText: how }).click();
const tool = (page: Page, name: string) =>
  page.getByRole('radiogroup', { name: 'Tool' }).getByRole('radio', { name }).click();

test('the section follows a line laid by mouse over the flat picture; lifted it is kept, and undone it is gone', async () => {
  const { page } = await openApp();
  await openGrooved(page);
  await takeTool(page, 'Straightedge', 'Flat');
  await page.getByText('Lay a line over the part or the flat picture.').waitFor();

  // Along 0 deg from radius 80 outwards: first short of the groove, then over it.
  const at = async (radius: number) => (await ring(page, 'Flat', radius / 160, { steps: 1, turns: 0 }))[0];
  await pressAlong(page, [await at(80), await at(95)]);
  await plot(page).waitFor();
  await expect.poll(() => words(page)).toContain('No wear lies under the line.');
  await page.mouse.move(...(await at(140)));
  await expect.poll(() => figure(page, 'Deepest')).toBe('3.00 mm');
  await expect.poll(() => figure(page, 'Line')).toMatch(/^(59|60)/);
  expect(await sections(page)).toBeUndefined();
  await page.mouse.up();

  await page.getByRole('button', { name: /^1 ?Line/ }).waitFor();
  const [kept] = (await sections(page)) ?? [];
  if (kept?.kind !== 'line') throw new Error('no line was kept');
  expect(kept.face).toBe('face');
  // The edges of the picture are drawn a pixel or two wide, and a pixel is most of a mm.
  expect(Math.abs(kept.from[0] - 80)).toBeLessThan(3);
  expect(Math.abs(kept.to[0] - kept.from[0] - 60)).toBeLessThan(2);
  // The figures follow: 3 mm of putty over the 20 mm of the groove.
  await expect
    .poll(() => words(page))
    .toMatch(/Putty on (19\.\d|20(\.\d)?) mm of it, up to 3\.00 mm thick\. Coat 0\.50 mm thick/);
  expect(await figure(page, 'Putty there')).toBe('3.00 mm');
  expect(await plot(page).textContent()).toMatch(/depth drawn \d+ times/);
  expect(await axeFindings(page)).toEqual([]);

  await press(page, 'Undo: section');
  await page.getByText('No section kept yet.', { exact: false }).waitFor();
  expect(await sections(page)).toBeUndefined();
  await press(page, 'Redo: section');
  expect(await sections(page)).toHaveLength(1);
});

test('spokes and rings are laid on the part as well, chosen, and taken away; the sheet shows what is kept', async () => {
  const { page } = await openApp();
  await openGrooved(page);
  await takeTool(page, 'Straightedge', '3D');
  await lay(page, 'Ring');
  await drawAlong(page, await ring(page, '3D', 110 / 160, { from: 0.2, turns: 0.02 }));
  await page.getByRole('button', { name: /^1 ?Ring/ }).waitFor();
  await lay(page, 'Spoke');
  await drawAlong(page, await ring(page, '3D', 0.8, { from: 0.24, turns: 0.01 }));
  await page.getByRole('button', { name: /^2 ?Spoke/ }).waitFor();
  await expect.poll(() => figure(page, 'Line')).toBe('100 mm');

  await page.getByRole('button', { name: /^1 ?Ring/ }).click();
  await expect.poll(() => figure(page, 'Line')).toMatch(/^(68|69|70)\d/);
  await page.getByRole('radio', { name: 'in', exact: true }).click();
  await expect.poll(() => figure(page, 'Deepest')).toBe('0.1180 in');
  await page.getByRole('radio', { name: 'mm', exact: true }).click();

  await goTo(page, 'Sheet');
  await expect.poll(() => page.locator('.sheet .section-plot').count()).toBe(2);
  await page
    .getByText(/^Section 2 of plate face: spoke at angle/)
    .first()
    .waitFor();
  await goTo(page, 'Wear');
  await press(page, 'Remove section 1');
  await page.getByRole('button', { name: /^1 ?Spoke/ }).waitFor();
  expect(await sections(page)).toHaveLength(1);
});

test('a section is typed by keyboard alone', async () => {
  const { page } = await openApp();
  await startOwn(page);
  await page.keyboard.press('2');
  await page.getByRole('region', { name: 'Wear', exact: true }).waitFor();
  await page.keyboard.press('l');
  await page.getByRole('radio', { name: 'Straightedge', checked: true }).waitFor();
  await page.getByRole('button', { name: 'Type a section' }).focus();
  await page.keyboard.press('Enter');
  await plot(page).waitFor();
  await type(page, 'B, angle', '180');
  await type(page, 'A, radius', '70');
  await type(page, 'B, radius', '70');
  // From rim to rim of the bore and on: 140 mm, its middle over no metal.
  await expect.poll(() => figure(page, 'Line')).toBe('140 mm');
  await expect.poll(() => plot(page).textContent()).toContain('no metal');
  await type(page, 'B, angle', '0');
  const box = page.locator('.field').filter({ has: field(page, 'B, angle') });
  await expect.poll(() => box.getByRole('alert').textContent()).toContain('is not another place than from');
});

test('on a phone a finger lays it, and the section comes into sight while it does', async () => {
  const { page } = await openApp(DEVICES.phone);
  await openGrooved(page);
  await goTo(page, 'Wear');
  await tool(page, 'Straightedge');
  await page.getByRole('radio', { name: 'Flat', exact: true }).click();
  await page.locator('.flat-area').waitFor();
  await page.evaluate(() => window.scrollTo(0, 0));
  const places = await Promise.all(
    [70, 85, 100, 115, 130, 145].map(
      async (radius) => (await ring(page, 'Flat', radius / 160, { steps: 1, turns: 0 }))[0],
    ),
  );
  await dragFinger(page, places);
  await page.getByRole('button', { name: /^1 ?Line/ }).waitFor();
  expect(await figure(page, 'Deepest')).toBe('3.00 mm');
  // Below the picture, which stays, and above the end of the screen; it slides there in a few frames.
  const overlap = async () => {
    const box = await plot(page).boundingBox();
    const part = await page.locator('.flat-area').boundingBox();
    if (box === null || part === null) return 'the plot or the picture is not on the screen';
    if (box.y < part.y + part.height - 1) return `the plot begins at ${box.y}, above the end of the picture`;
    const end = box.y + box.height;
    return end <= DEVICES.phone.viewport.height + 1 ? 'in sight' : `the plot ends at ${end}`;
  };
  await expect.poll(overlap).toBe('in sight');
});
