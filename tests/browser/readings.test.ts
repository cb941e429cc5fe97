import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { MarkFile } from '../../geometry/job/job-file.ts';
import {
  commandResult,
  faultBeside,
  field,
  figures,
  press,
  savedJob,
  savedText,
  startOwn,
  type,
} from './app.ts';
import { axeFindings, DEVICES, openApp } from './page.ts';
import { expectMarks, ring, takeTool } from './pictures.ts';

type Readings = Extract<MarkFile, { readonly kind: 'readings' }>;

async function readingsOf(page: Page): Promise<Readings['points']> {
  const [{ wear }] = (await savedJob(page)).parts;
  return wear.flatMap((mark) => (mark.kind === 'readings' ? mark.points : []));
}

const choose = (page: Page, label: string) => page.locator('.choice', { hasText: label }).click();
const table = (page: Page) => page.getByRole('textbox', { name: 'Columns from a spreadsheet' });
const focused = (page: Page) =>
  page.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? document.activeElement?.id ?? '');

test('tapped on the flat picture and typed: each reading is a step, and what is typed stays with the hand', async () => {
  const { page } = await openApp();
  await startOwn(page);
  await takeTool(page, 'Readings', 'Flat');
  const [right, top, left] = await ring(page, 'Flat', 0.7, { turns: 0.5, steps: 2 });
  await page.mouse.click(...right);
  await page.keyboard.type('2,3');
  // Elsewhere after all: the text goes along, and so does the keyboard.
  await page.mouse.click(...top);
  expect(await field(page, 'Depth here').inputValue()).toBe('2,3');
  await page.keyboard.type('5');
  await page.keyboard.press('Enter');
  await expectMarks(page, 1);
  await page.mouse.click(...left);
  await page.keyboard.type('99');
  await page.keyboard.press('Enter');
  expect(await faultBeside(page, 'Depth here')).toContain('99 is not at most the wall, thickness 20');
  await field(page, 'Depth here').fill('1.2');
  await press(page, 'Put down');
  const [first, second, ...more] = await readingsOf(page);
  expect([first[2], second[2], more]).toEqual([2.35, 1.2, []]);
  // A tap is as near as a pixel: less than a millimetre here.
  expect(Math.abs(first[1] - 90)).toBeLessThan(1);
  expect(Math.abs(second[1] - 180)).toBeLessThan(1);
  expect(Math.abs(first[0] - second[0])).toBeLessThan(1);

  // A place that is given up leaves nothing.
  await page.mouse.click(...right);
  await page.keyboard.type('7');
  await page.keyboard.press('Escape');
  await page.keyboard.press('Enter');
  expect(await faultBeside(page, 'Depth here')).toContain('The place is missing');

  // By a gauge on a bar: the sum stands beside the field, the depth in the job.
  await choose(page, 'Two gauge readings');
  await type(page, 'Reading on sound metal', '9.85');
  await page.mouse.click(...right);
  await page.keyboard.type('12.40');
  await page.getByText('12.40 - 9.85 = 2.55 mm deep').waitFor();
  await page.keyboard.press('Enter');
  await expect
    .poll(async () => (await readingsOf(page)).map(([, , depth]) => depth))
    .toEqual([2.35, 1.2, 2.55]);
  await press(page, /^Undo/);
  await expect.poll(async () => (await readingsOf(page)).length).toBe(2);
  await press(page, /^Redo/);
  await expect.poll(async () => (await readingsOf(page)).length).toBe(3);
});

test('by keyboard alone: the first by its numbers, then a table that is typed down and along', async () => {
  const { page } = await openApp();
  await startOwn(page);
  await page.keyboard.press('2');
  await page.getByRole('button', { name: 'Type gauge readings' }).focus();
  await page.keyboard.press('Enter');
  await field(page, 'Radius').waitFor();
  for (const text of ['110', '40', '2.3']) {
    await page.keyboard.type(text);
    await page.keyboard.press('Enter');
  }
  await expectMarks(page, 1);
  // And on with the next one.
  for (const text of ['4 1/2 in', '90', '1.5']) {
    await page.keyboard.type(text);
    await page.keyboard.press('Enter');
  }
  expect(await readingsOf(page)).toEqual([
    [110, 40, 2.3],
    [114.3, 90, 1.5],
  ]);

  await page.getByRole('button', { name: 'Open the table of 2 readings' }).focus();
  await page.keyboard.press('Enter');
  await field(page, 'Depth of reading 1').focus();
  await page.keyboard.type('2,75');
  await page.keyboard.press('Enter');
  expect(await focused(page)).toBe('Depth of reading 2');
  await page.keyboard.type('21');
  await page.keyboard.press('ArrowDown');
  const cell = page.getByRole('cell').filter({ has: field(page, 'Depth of reading 2') });
  expect(await cell.getByRole('alert').textContent()).toBe(
    'parts[0].wear[0].points[1][2]: 21 is not at most the wall, thickness 20',
  );
  expect(await focused(page)).toBe('Depth of reading 2');
  await page.keyboard.press('Escape');
  await page.keyboard.press('ArrowDown');
  expect(await focused(page)).toBe('Depth of a new reading');
  await field(page, 'Radius of a new reading').focus();
  for (const text of ['120', '300', '0.4']) {
    await page.keyboard.type(text);
    await page.keyboard.press('Enter');
  }
  expect(await focused(page)).toBe('Radius of a new reading');
  expect(await readingsOf(page)).toEqual([
    [110, 40, 2.75],
    [114.3, 90, 1.5],
    [120, 300, 0.4],
  ]);
  await page.getByRole('button', { name: 'Remove reading 1' }).focus();
  await page.keyboard.press('Enter');
  await expect.poll(async () => (await readingsOf(page)).length).toBe(2);
  await type(page, 'Gauge error, plus or minus', '0.05');
  await page.getByText('Gauge readings, 2').waitFor();
  await page.getByText('0.4 to 1.5 mm, gauge ±0.05 mm').waitFor();

  // What stands on the screen is what the command says of the saved file.
  const shown = await figures(page);
  const { filler } = await commandResult(await savedText(page));
  expect(Number.parseFloat(shown.Putty)).toBeCloseTo(filler.volume, 0);
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`a pasted table is looked at, put right and taken in one step; axe finds nothing, ${colorScheme}`, async () => {
    const { page } = await openApp({ ...DEVICES.desktop, colorScheme, reducedMotion: 'reduce' });
    await startOwn(page);
    await takeTool(page, 'Readings', 'Flat');
    expect(await axeFindings(page), 'single').toEqual([]);
    await choose(page, 'Paste');
    await table(page).fill('100,5,20,0,1,5\n100,5,40,0,1,75');
    await page.getByText('a comma may part the columns or mark the decimals').waitFor();
    const rows = ['Angle;Radius;Depth', '0;100,5;1,5', '40;100,5;rough', '80;100,5;1,75', '120;100,5;2,00'];
    await table(page).fill(rows.join('\n'));
    await page.getByText('3 to be taken, 1 refused').waitFor();
    await page.getByText('Row 3, depth: "rough" is not a number. Type one like 3.5 mm.').waitFor();
    expect(await axeFindings(page), 'paste').toEqual([]);
    // The person knows better which column is which.
    await page.getByRole('combobox', { name: 'Radius' }).selectOption({ label: '1: Angle' });
    await page.getByText('Row 2, depth').waitFor({ state: 'detached' });
    await page.getByRole('combobox', { name: 'Radius' }).selectOption({ label: '2: Radius' });
    await press(page, 'Take 3 readings');
    await page.getByText('3 readings taken, 1 refused.').waitFor();
    expect(await readingsOf(page)).toEqual([
      [100.5, 0, 1.5],
      [100.5, 80, 1.75],
      [100.5, 120, 2],
    ]);
    await press(page, /^Undo/);
    await expectMarks(page, 0);
    await press(page, /^Redo/);
    await expectMarks(page, 1);

    // A thickness says by its heading what it is, and a file is as good as the clipboard.
    const chooser = page.waitForEvent('filechooser');
    await press(page, 'Open a file');
    const csv = '\uFEFFx,y,"wall left (mm)"\n100,0,18.5\n0,100,17\n';
    await (await chooser).setFiles({ name: 'wall.csv', mimeType: 'text/csv', buffer: Buffer.from(csv) });
    await press(page, 'Take 2 readings');
    // The plate of a job of one's own is 20 mm thick.
    expect((await readingsOf(page)).slice(3)).toEqual([
      [100, 0, 1.5],
      [100, 90, 3],
    ]);
  });
}

test('over the end of a page of the table: the number is taken, and nothing is left behind as a fault', async () => {
  const { page } = await openApp();
  await startOwn(page);
  await takeTool(page, 'Readings', 'Flat');
  await choose(page, 'Paste');
  await table(page).fill(
    Array.from({ length: 120 }, (_, i) => `${80 + (i % 3) * 20}\t${i * 3}\t1`).join('\n'),
  );
  await press(page, 'Take 120 readings');
  await press(page, /^Open the table/);
  await page.getByText('1 to 50 of 120').waitFor();
  await field(page, 'Depth of reading 50').fill('1.9');
  await page.keyboard.press('Enter');
  await page.getByText('51 to 100 of 120').waitFor();
  await expect.poll(() => focused(page)).toBe('Depth of reading 51');
  await page.keyboard.press('ArrowUp');
  await expect.poll(() => focused(page)).toBe('Depth of reading 50');
  expect(await field(page, 'Depth of reading 50').inputValue()).toBe('1.9');
  await expectMarks(page, 1);
  expect((await readingsOf(page))[49]).toEqual([100, 147, 1.9]);
});

test('a grid of two rings and four spokes is walked to and fro, left and gone on with', async () => {
  const { page } = await openApp(DEVICES.tablet);
  await startOwn(page);
  await takeTool(page, 'Readings', 'Flat');
  await choose(page, 'Grid');
  for (const [label, text] of [
    ['From radius', '80'],
    ['To radius', '140'],
    ['Rings', '2'],
    ['Spokes', '4'],
    ['First angle', '10'],
  ] as const)
    await type(page, label, text);
  await page.getByText('8 places, to and fro.').waitFor();
  await press(page, 'Start the walk');
  const next = () => page.locator('.walk-place').textContent();
  const depths = ['1', '1.1', '1.2', '1.3', '1.4'];
  for (const [i, depth] of depths.entries()) {
    await page.getByText(`${i + 1} of 8`, { exact: true }).waitFor();
    await page.keyboard.type(depth);
    await page.keyboard.press('Enter');
  }
  expect(await next()).toBe('Radius140 mmAngle190°');
  expect(
    await page
      .locator('.walk-place dd')
      .first()
      .evaluate((figure) => getComputedStyle(figure).fontSize),
  ).toBe('44px');
  await press(page, 'Skip');
  expect(await next()).toBe('Radius140 mmAngle100°');

  // Another step, and back: the walk has waited.
  await page.keyboard.type('1.6');
  await page.getByRole('button', { name: 'Fill', exact: true }).click();
  await page.getByRole('button', { name: 'Wear', exact: true }).click();
  await page.getByText('7 of 8', { exact: true }).waitFor();
  expect(await field(page, 'Depth here').inputValue()).toBe('1.6');
  await press(page, 'Take it');
  await page.getByText('8 of 8', { exact: true }).waitFor();
  await press(page, 'Back');
  await page.getByText('Read here: 1.6 mm deep. Another reading takes its place.').waitFor();
  await field(page, 'Depth here').fill('1.7');
  await field(page, 'Depth here').press('Enter');
  await field(page, 'Depth here').fill('1.8');
  await field(page, 'Depth here').press('Enter');
  await page.getByText('7 of 8 places read.').waitFor();
  expect(await readingsOf(page)).toEqual([
    [80, 10, 1],
    [80, 100, 1.1],
    [80, 190, 1.2],
    [80, 280, 1.3],
    [140, 280, 1.4],
    [140, 100, 1.7],
    [140, 10, 1.8],
  ]);
});
