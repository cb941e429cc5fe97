import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { commandResult, faultBeside, figures, goTo, press, savedJob, savedText, type } from './app.ts';
import { axeFindings, DEVICES, openApp } from './page.ts';
import { ring } from './pictures.ts';

const PICTURES = ['part-lines', 'flat-overlay'] as const;

const rows = (page: Page) => page.getByRole('list', { name: 'Mixes' }).getByRole('listitem');
/** The words that name the mixes on a picture. */
const tags = (page: Page, picture: string) =>
  page.locator(`.${picture} .batch-tag[data-lead]:not([hidden]) text`).allTextContents();
/** The mix whose tag is lit on each picture, and whether its edge is. */
const lit = (page: Page) =>
  Promise.all(
    PICTURES.map(async (picture) => {
      const group = page.locator(`.${picture} .batch-marks`);
      const numbers = await group
        .locator('.batch-tag[data-lit]:not([hidden])')
        .evaluateAll((found) => found.map((tag) => tag.getAttribute('data-batch')));
      const edge = await group.locator('.batch-line-lit').getAttribute('d');
      return [new Set(numbers).size === 1 ? numbers[0] : null, edge !== null && edge !== ''];
    }),
  );
const LIT = (number: string) => [
  [number, true],
  [number, true],
];
const DARK = [
  [null, false],
  [null, false],
];
const choose = (page: Page, question: RegExp, answer: string) =>
  page.getByRole('radiogroup', { name: question }).locator('.choice', { hasText: answer }).click();

test('each mix is drawn and named where it goes on both pictures, and stands out when it is pointed at', async () => {
  const { page } = await openApp();
  await figures(page);
  const { filler } = await commandResult(await savedText(page));
  expect(filler.batches.length).toBeGreaterThan(1);
  expect(await page.locator('.batch-marks').count(), 'on the step that fills alone').toBe(0);
  await goTo(page, 'Fill');
  // What the scale is to show, as the headless command says it.
  const words = filler.batches.map(
    ({ number, weigh }) => `Mix ${number}: A ${weigh?.partA} g, B ${weigh?.partB} g`,
  );
  for (const picture of PICTURES)
    await expect.poll(async () => (await tags(page, picture)).sort(), { message: picture }).toEqual(words);
  await expect.poll(() => rows(page).count()).toBe(filler.batches.length);
  const [{ weigh }] = filler.batches;
  const both = (weigh?.partA ?? 0) + (weigh?.partB ?? 0);
  await rows(page).first().getByText(`In one bowl: A to ${weigh?.partA} g, then B to ${both} g`).waitFor();

  expect(await lit(page)).toEqual(DARK);
  await rows(page).nth(1).hover();
  await expect.poll(() => lit(page), { message: 'pointed at in the list' }).toEqual(LIT('2'));
  // Off the panel: what comes into sight by focus must not slide under the pointer.
  await page.getByRole('button', { name: 'File' }).hover();
  await expect.poll(() => lit(page)).toEqual(DARK);
  await rows(page).first().getByRole('button').focus();
  await expect.poll(() => lit(page), { message: 'in focus' }).toEqual(LIT('1'));
  await page.getByRole('button', { name: 'File' }).focus();
  await expect.poll(() => lit(page)).toEqual(DARK);

  // 110 of 160 mm of radius, a quarter turn before the mark: in the second mix.
  const [place] = await ring(page, 'Flat', 110 / 160, { from: -90 / 360, turns: 0, steps: 1 });
  await page.mouse.move(...place);
  await expect.poll(() => lit(page), { message: 'on the picture' }).toEqual(LIT('2'));
  await expect.poll(() => rows(page).nth(1).getAttribute('data-lit')).toBe('true');
  await goTo(page, 'Balance');
  expect(await page.locator('.batch-marks').count()).toBe(0);
});

test('the answers about the service give a class of putty, and are kept until they are cleared', async () => {
  const { page } = await openApp();
  await press(page, 'Start your own');
  await figures(page);
  await goTo(page, 'Fill');
  const section = page.getByRole('region', { name: 'Which putty' });
  await section.getByText('Say what the pump moves, for advice on the putty.').waitFor();
  await press(page, 'Which putty');
  await choose(page, /carry along/, 'Hard grains');
  await section.getByText('Answer the questions below for advice.').waitFor();
  await choose(page, /feel grains/, 'Grains under 2 mm');
  await choose(page, /^How much/, 'Under 5 %');
  await section.getByText('Advice: a fine paste').waitFor();
  await section.getByText('The service is abrasive.').waitFor();
  await choose(page, /grains are$/, 'Angular');
  await section.getByText('Advice: a putty with coarse ceramic beads').waitFor();
  await section.getByText('The service is severely abrasive.').waitFor();
  await section.getByText(/^Angular grains wear/).waitFor();
  expect((await savedJob(page)).service).toEqual({
    solids: 'hard',
    grains: 'sand',
    concentration: 'little',
    shape: 'angular',
  });
  await choose(page, /carry along/, 'Soft solids');
  await section.getByText('The service is mildly abrasive.').waitFor();
  expect((await savedJob(page)).service).toEqual({ solids: 'soft', concentration: 'little' });
  await press(page, 'Clear the answers');
  await section.getByText('Say what the pump moves, for advice on the putty.').waitFor();
  expect((await savedJob(page)).service).toBeUndefined();
});

test('the waste of coat is typed either way, and the new fields of the data sheets are saved', async () => {
  const { page } = await openApp();
  await figures(page);
  await goTo(page, 'Fill');
  // A fifth of the mix lost leaves four fifths: a quarter on top of the need.
  await type(page, 'Lost, of the coat you mix', '20');
  expect((await savedJob(page)).repair?.coatWaste).toBe(25);
  await page.getByText('25 % on top of the need is 20 % of what you mix lost.').waitFor();
  await page.getByText('On a wet film comb the 250 µm tooth wets, the 275 stays dry.').waitFor();

  await press(page, 'Data sheet of the putty');
  const times = page.getByRole('button', { name: 'Times as it cures' });
  await times.click();
  await type(page, 'Firms up from', '50');
  expect(await faultBeside(page, 'Firms up from')).toContain('at most 45');
  await type(page, 'Firms up from', '25');
  await type(page, 'Hard after', '6 h');
  const turn = (words: string) => page.locator('.switch:visible', { hasText: words }).click();
  await turn('Times follow an activation energy');
  await page.getByText(/^Fallback in use, the workshop rule/).waitFor();
  await turn('A cartridge that mixes A and B itself');
  await page.getByText('The cartridge mixes A and B itself: nothing to weigh.').waitFor();
  const { filler } = await savedJob(page);
  expect(filler).toMatchObject({
    firmsUp: { from: 25, to: 45, at: 25 },
    hard: { minutes: 360, at: 25 },
    activationEnergy: null,
    packs: [{ selfMixing: true }],
  });
});

for (const device of ['desktop', 'phone'] as const) {
  test(`axe finds nothing with everything on Fill open: ${device}`, async () => {
    const { page } = await openApp({ ...DEVICES[device], reducedMotion: 'reduce' });
    await figures(page);
    await goTo(page, 'Fill');
    await press(page, 'Which putty');
    await press(page, 'Data sheet of the coat');
    await press(page, 'Scale, and warmth of the part');
    await press(page, 'Area and coat by face');
    expect(await axeFindings(page)).toEqual([]);
    const isWider = await page.evaluate(() => document.documentElement.scrollWidth > window.innerWidth);
    expect(isWider).toBe(false);
  });
}
