import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { ImpellerFile } from '../../geometry/job/job-file.ts';
import {
  commandResult,
  expectShown,
  faultBeside,
  figureNow,
  figures,
  goTo,
  press,
  savedJob,
  savedText,
  startOwn,
  type,
} from './app.ts';
import { axeFindings, openApp, type Place } from './page.ts';
import { drawAlong, expectMarks, pressAlong } from './pictures.ts';

const choose = (page: Page, label: string) => page.locator('.choice', { hasText: label }).click();
const takeTool = (page: Page, tool: string) =>
  page.getByRole('radiogroup', { name: 'Tool' }).getByRole('radio', { name: tool, exact: true }).click();
const impellerOf = async (page: Page) => (await savedJob(page)).parts[0] as ImpellerFile;
const newestMark = (page: Page) => page.locator('.mark-text').first().textContent();

/** A place of a picture, as shares of its width and height. */
async function placeOn(page: Page, picture: string, across: number, down: number): Promise<Place> {
  const box = await page.locator(picture).boundingBox();
  if (box === null) throw new Error(`placeOn: ${picture} is not on the screen`);
  return [box.x + across * box.width, box.y + down * box.height];
}

test('an impeller typed from caliper, protractor and rubbing is worn on its vanes and balanced, and figures and file agree', async () => {
  const { page } = await openApp();
  await startOwn(page);
  await press(page, 'Add an impeller');
  await page.getByRole('radio', { name: 'plate', exact: true }).click();
  await press(page, 'Remove plate');

  await type(page, 'Outer diameter', '300');
  await type(page, 'Shroud thickness', '3/8 in');
  await type(page, 'Hub diameter', '80');
  await type(page, 'Vanes', '6');
  await type(page, 'Inlet diameter', '13 cm');
  await type(page, 'Height at the inlet', '40,0');
  await type(page, 'Height at the outlet', '26');
  await type(page, 'Thickness at the outlet', '7');
  await type(page, 'Inlet diameter', '310');
  expect(await faultBeside(page, 'Inlet diameter')).toContain('not smaller than outerDiameter 300');
  await type(page, 'Inlet diameter', '130');
  expect(await faultBeside(page, 'Inlet diameter')).toBe('');
  await type(page, 'Blade angle at the inlet', '4');
  expect(await faultBeside(page, 'Blade angle at the inlet')).toContain('5');
  await type(page, 'Blade angle at the inlet', '22');
  await page.getByText('The wrap is measured from a rubbing').click();
  await type(page, 'Measured wrap', '82');
  // Quadrature of other code and the closed form of an arc: 105.26 and 80.58 deg.
  expect(await page.locator('.choice').allTextContents()).toEqual(
    expect.arrayContaining(['Even change of angle: wraps 105°', 'Single arc: wraps 81°']),
  );
  await page.getByText('The rubbing says 82°: single arc comes closest. Try it.').waitFor();
  await choose(page, 'Single arc');
  expect(await impellerOf(page)).toMatchObject({
    outerDiameter: 300,
    shroudThickness: 9.525,
    vanes: { count: 6, inletDiameter: 130, heightInlet: 40, thicknessOutlet: 7, camber: 'arc', wrap: 82 },
  });
  expect(await figures(page)).toMatchObject({ Putty: '0 mL', 'Thinnest wall': '7.00 mm' });

  expect(await axeFindings(page)).toEqual([]);

  await goTo(page, 'Wear');
  await takeTool(page, 'Brush');
  await type(page, 'Depth', '3');
  const brushed = await brushASide(page);
  const side = await figures(page);
  expect(side['Deepest wear']).toBe('3.00 mm');
  // The side that was brushed is the face in hand, and the flat picture shows it.
  expect(brushed).toMatch(/^Brush, vane \d, (pressure|suction) side, 3 mm/);

  // A stroke on the flat picture moves the figures before it is lifted.
  await type(page, 'Depth', '5');
  await pressAlong(page, [
    await placeOn(page, '.flat-edges', 0.4, 0.6),
    await placeOn(page, '.flat-edges', 0.6, 0.6),
  ]);
  await expect.poll(() => figureNow(page, 'Putty')).not.toBe(side.Putty);
  await page.mouse.up();
  await expectMarks(page, 2);

  await page.getByRole('radio', { name: '2', exact: true }).click();
  await choose(page, 'Leading edge');
  await takeTool(page, 'Edge');
  await drawAlong(page, [await placeOn(page, '.flat-edges', 0.5, 0.5)]);
  await expectMarks(page, 3);
  await type(page, 'Loss at point 1', '2');
  await type(page, 'Loss at point 2', '7');
  const one = await figures(page);
  expect(await axeFindings(page)).toEqual([]);
  await press(page, 'Copy to all vanes');
  expect((await impellerOf(page)).wear[2]).toMatchObject({
    face: 'vane-*/leading-edge',
    profile: [
      [0, 2],
      [40, 7],
    ],
  });
  const all = await figures(page);
  expect(Number.parseFloat(all.Putty)).toBeGreaterThan(Number.parseFloat(one.Putty));
  await press(page, /^Undo/);
  await expect.poll(async () => (await impellerOf(page)).wear[2].face).toBe('vane-2/leading-edge');
  expect(await figures(page)).toEqual(one);
  await press(page, /^Redo/);
  expect(await figures(page)).toEqual(all);

  const { filler, coat, parts } = await commandResult(await savedText(page));
  expectShown(all.Putty, [filler.volume]);
  expectShown(all.Coat, [coat.volume]);
  expectShown(all['Deepest wear'], [Math.max(...parts[0].faces.map(({ deepest }) => deepest))]);
  expectShown(all['Thinnest wall'], [parts[0].thinnest.remaining]);

  // With one edge alone eaten back it shakes, and a correction brings it inside.
  await press(page, /^Undo/);
  await goTo(page, 'Balance');
  await press(page, 'Work out the balance');
  await type(page, 'Speed', '2900');
  await page.getByText('Over the limit').waitFor();
  expect((await commandResult(await savedText(page))).balance?.verdict).toBe('over');
  await page.getByRole('button', { name: 'Take this' }).first().click();
  await page.getByText('Within the limit').waitFor();
  const corrected = await commandResult(await savedText(page));
  expect(corrected.balance?.verdict).toBe('within');
  expectShown((await figures(page)).Unbalance, [corrected.balance?.net.amount ?? Number.NaN]);
  expect(await axeFindings(page)).toEqual([]);
});

/** Dabs here and there on the part until a side of a vane has taken one; the others are undone. */
async function brushASide(page: Page): Promise<string> {
  await press(page, 'Angled');
  for (const down of [0.62, 0.5, 0.7]) {
    for (const across of [0.35, 0.45, 0.6, 0.7]) {
      const [x, y] = await placeOn(page, '.part-area', across, down);
      await drawAlong(page, [
        [x, y],
        [x + 12, y],
      ]);
      const words = (await page.locator('.mark').count()) === 0 ? '' : ((await newestMark(page)) ?? '');
      if (/side/.test(words)) return words;
      if (words !== '') await press(page, /^Undo/);
    }
  }
  throw new Error('brushASide: no side of a vane was met');
}
