import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { JobFile, MarkFile } from '../../geometry/job/job-file.ts';
import { newPlateJob } from '../../geometry/job/new-plate-job.ts';
import { writeJob } from '../../geometry/job/write-job.ts';
import { downloadOf, figures, goTo, openFile, press, savedJob, savedText } from './app.ts';
import { axeFindings, openApp } from './page.ts';
import { drawAlong, expectMarks, ring, takeTool } from './pictures.ts';

const TITLE = 'Pump "P-2" <b>&amp;</b> plate';

/** A deep hollow, a wide one 40 degrees on that is worn less, and gauge readings on sound metal far from both. */
const WEAR: readonly MarkFile[] = [
  { kind: 'patch', face: 'face', first: [95, 115], second: [20, 50], depth: 4 },
  { kind: 'patch', face: 'face', first: [75, 135], second: [90, 150], depth: 2 },
  {
    kind: 'readings',
    face: 'face',
    points: [
      [100, 250, 0],
      [120, 260, 0],
      [110, 280, 0],
    ],
    within: [
      [90, 240],
      [130, 240],
      [130, 290],
      [90, 290],
    ],
  },
];

function plateJob(change: Partial<JobFile> = {}): string {
  const plate = newPlateJob();
  return writeJob({
    ...plate,
    title: TITLE,
    parts: plate.parts.map((part) => ({ ...part, wear: [...WEAR] })),
    ...change,
  });
}

const rows = (page: Page) => page.locator('.regions').getByRole('listitem');
const numbersOf = (page: Page) => page.locator('.region-number').allTextContents();
/** Path data of the region lit up in a picture; '' when none is. */
const lit = (page: Page, picture: 'part-lines' | 'flat-overlay') =>
  page.locator(`.${picture} .surface-region`).evaluate((path) => path.getAttribute('d') ?? '');
const bothLit = async (page: Page) =>
  [await lit(page, 'part-lines'), await lit(page, 'flat-overlay')].map((path) => path !== '');
const choice = (row: Locator, name: string) => row.getByRole('radio', { name });

test('the damage is sorted, pointed at in list and pictures, and a choice outlives a stroke that joins two regions', async () => {
  const { page } = await openApp();
  await openFile(page, 'two.job.json', plateJob());
  await expectMarks(page, 3);
  await figures(page);
  await takeTool(page, 'Turn', '3D');
  await page.locator('.flat-edges').waitFor();
  expect(await numbersOf(page)).toEqual(['1', '2']);
  await page.getByRole('radio', { name: 'Widest' }).click();
  await expect.poll(() => numbersOf(page)).toEqual(['2', '1']);
  await goTo(page, 'Fill');
  expect(await numbersOf(page), 'kept from step to step').toEqual(['2', '1']);
  await goTo(page, 'Wear');
  await page.getByRole('radio', { name: 'Deepest' }).click();
  await expect.poll(() => numbersOf(page)).toEqual(['1', '2']);

  expect(await bothLit(page)).toEqual([false, false]);
  await rows(page).first().hover();
  await expect.poll(() => bothLit(page), { message: 'pointed at in the list' }).toEqual([true, true]);
  const first = await lit(page, 'flat-overlay');
  await page.getByRole('heading', { name: 'Damage' }).hover();
  await expect.poll(() => bothLit(page)).toEqual([false, false]);
  await choice(rows(page).nth(1), 'Fill').focus();
  await expect.poll(() => bothLit(page), { message: 'in focus' }).toEqual([true, true]);
  expect(await lit(page, 'flat-overlay')).not.toBe(first);

  // 105 of 160 mm of radius, 35 degrees: in the deep one.
  const [place] = await ring(page, 'Flat', 105 / 160, { from: 35 / 360, turns: 0, steps: 1 });
  await page.mouse.move(...place);
  await expect
    .poll(() => rows(page).first().getAttribute('data-lit'), { message: 'on the picture' })
    .toBe('true');
  await expect.poll(() => bothLit(page)).toEqual([true, true]);
  await page.mouse.move(place[0], place[1] - 200);

  await choice(rows(page).first(), 'Leave').click();
  await rows(page)
    .first()
    .getByText('Left because you chose so, though the deepest is over 1.00 mm.')
    .waitFor();
  await takeTool(page, 'Brush', 'Flat');
  await drawAlong(page, await ring(page, 'Flat', 105 / 160, { from: 40 / 360, turns: 80 / 360 }));
  await expect.poll(() => rows(page).count(), { message: 'one region' }).toBe(1);
  await rows(page)
    .first()
    .getByText('Left because you chose so, though the deepest is over 1.00 mm.')
    .waitFor();
  await press(page, /^Undo/);
  await expect.poll(() => rows(page).count(), { message: 'two again' }).toBe(2);
  await rows(page)
    .first()
    .getByText(/^Left because you chose so/)
    .waitFor();
  await rows(page).nth(1).getByText('Filled: its deepest reaches 1.00 mm.').waitFor();

  await press(page, 'Totals by face');
  const sum = page.getByRole('table', { name: 'Totals by face' }).getByRole('row').last();
  await expect.poll(() => sum.textContent()).toMatch(/^All/);
});

test('a choice that lost its wear is said so, and taken over or dropped by a press', async () => {
  const { page } = await openApp();
  const overrule = [
    { at: 'plate:face', point: [105, 56] as [number, number], action: 'leave' as const },
    { at: 'plate:face', point: [105, 200] as [number, number], action: 'fill' as const },
  ];
  await openFile(page, 'idle.job.json', plateJob({ repair: { overrule } }));
  await expectMarks(page, 3);
  await figures(page);
  await goTo(page, 'Wear');
  await page.getByText('You chose to leave the wear at face, radius 105 mm, 56°.').waitFor();
  await press(page, 'Leave region 1');
  await rows(page)
    .first()
    .getByText(/^Left because you chose so/)
    .waitFor();
  await page.getByText('You chose to fill the wear at face, radius 105 mm, 200°.').waitFor();
  await press(page, 'Drop the choice');
  await expect.poll(() => page.getByText(/^You chose to/).count()).toBe(0);
  expect((await savedJob(page)).repair?.overrule).toMatchObject([{ at: 'plate:face', action: 'leave' }]);
});

test('a region on a face out of sight comes into the flat picture, and lights up there', async () => {
  const { page } = await openApp();
  await press(page, 'File');
  await page.getByRole('menuitem', { name: /eaten/i }).click();
  await expectMarks(page, 44);
  await figures(page);
  await takeTool(page, 'Turn', '3D');
  await page.locator('.flat-edges').waitFor();
  for (let i = 0; i < 8; i++) {
    await rows(page).nth(i).locator('.region-title').click();
    await expect.poll(() => lit(page, 'flat-overlay'), { message: `row ${i + 1}` }).not.toBe('');
  }
  // Seen from the front nothing stands before the shroud, whatever face the flat picture shows.
  await rows(page).filter({ hasText: 'leading edge' }).first().locator('.region-title').click();
  const shroud = rows(page).filter({ hasText: 'Front of the shroud' }).first();
  await shroud.hover();
  await expect.poll(() => bothLit(page)).toEqual([true, false]);
  await shroud.locator('.region-title').click();
  await expect.poll(() => bothLit(page)).toEqual([true, true]);
  await expect
    .poll(() => page.locator('.flat-vanes text:not([hidden])').allTextContents())
    .toContain('Vane 3');
});

test('gauge readings stand in both pictures, those in hand stronger', async () => {
  const { page } = await openApp();
  await openFile(page, 'read.job.json', plateJob());
  await expectMarks(page, 3);
  await figures(page);
  await takeTool(page, 'Turn', '3D');
  const crosses = (picture: string, kind: string) =>
    page
      .locator(`.${picture} path.reading-${kind}`)
      .evaluate((path) => (path.getAttribute('d')?.match(/M/g)?.length ?? 0) / 2);
  for (const picture of ['part-lines', 'flat-overlay']) {
    await expect.poll(() => crosses(picture, 'others'), { message: picture }).toBe(3);
    expect(await crosses(picture, 'in-hand')).toBe(0);
  }
  await page.locator('.mark-words').first().click();
  for (const picture of ['part-lines', 'flat-overlay'])
    await expect.poll(() => crosses(picture, 'in-hand'), { message: picture }).toBe(3);
});

test('the face is saved as a picture that is true to scale, and nothing of the job changes', async () => {
  const { page } = await openApp();
  await openFile(page, 'two.job.json', plateJob());
  await expectMarks(page, 3);
  await figures(page);
  await goTo(page, 'Wear');
  const before = await savedText(page);
  const text = await downloadOf(page, () => press(page, 'Save as SVG'));
  const found = await page.evaluate((svg) => {
    const root = new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement;
    const texts = (kind: string) => [...root.querySelectorAll(kind)].map(({ textContent }) => textContent);
    return {
      name: root.localName,
      title: texts('title')[0],
      width: root.getAttribute('width'),
      view: root.getAttribute('viewBox')?.split(' ').map(Number),
      edge: root.querySelector('.flat-edge')?.getAttribute('d'),
      regions: texts('.flat-region-number'),
      crosses: root.querySelector('.flat-reading')?.getAttribute('d')?.match(/M/g)?.length,
      foreign: root.querySelectorAll('script, image, use, foreignObject, [href], [style]').length,
    };
  }, text);
  expect(found).toMatchObject({
    name: 'svg',
    title: `${TITLE}, plate, face`,
    regions: ['1', '2'],
    crosses: 6,
    foreign: 0,
  });
  expect(found.width).toBe(`${found.view?.[2]}mm`);
  expect(found.edge).toBeTruthy();
  expect(await savedText(page)).toBe(before);
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`axe finds nothing in the list, its totals and an idle choice: ${colorScheme}`, async () => {
    const { page } = await openApp({
      viewport: { width: 1440, height: 900 },
      colorScheme,
      reducedMotion: 'reduce',
    });
    const overrule = [{ at: 'plate:face', point: [105, 56] as [number, number], action: 'leave' as const }];
    await openFile(page, 'idle.job.json', plateJob({ repair: { overrule } }));
    await expectMarks(page, 3);
    await figures(page);
    await goTo(page, 'Wear');
    await press(page, 'Totals by face');
    await rows(page).first().hover();
    expect(await axeFindings(page)).toEqual([]);
    await press(page, 'Damage');
    expect(await axeFindings(page), 'folded').toEqual([]);
    await press(page, 'Damage');
  });
}
