import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { figures, goTo, keptOnDevice, press, savedJob } from './app.ts';
import { axeFindings, DEVICES, openApp } from './page.ts';

const MINUTE = 60_000;

/** The sample at the bench, with the clock in the test's hands. */
async function openBench(device: Parameters<typeof openApp>[0] = DEVICES.tablet): Promise<Page> {
  const { page } = await openApp({ ...device, reducedMotion: 'reduce' });
  await page.clock.install();
  await figures(page);
  await enterBench(page);
  return page;
}

async function enterBench(page: Page): Promise<void> {
  await goTo(page, 'Plan');
  await press(page, 'Open the bench screen');
  await page.getByText(/^Now: step/).waitFor();
}

const now = (page: Page) => page.getByRole('region', { name: 'Now' });

/** What stands as the step in hand. */
const inHand = (page: Page) => now(page).getByRole('heading', { level: 2 }).textContent();

/** Presses Done until the first mix is in hand. */
async function toFirstMix(page: Page): Promise<void> {
  for (const step of ['Wash', 'Blast', 'Blow down', 'Solvent wipe']) {
    await expect.poll(() => inHand(page)).toBe(step);
    await press(now(page), 'Done');
    // Two presses on one spot within a moment are one.
    await page.clock.runFor(1000);
  }
  await expect.poll(() => inHand(page)).toBe('Mix and fill 1');
}

/** s that the countdown shows; negative once the mix is over. */
async function timeLeft(page: Page): Promise<number> {
  const text = (await page.getByRole('timer', { name: 'Time left in this mix' }).textContent()) ?? '';
  const seconds = text
    .replace('+', '')
    .split(':')
    .reduce((sum, part) => sum * 60 + Number(part), 0);
  return text.startsWith('+') ? -seconds : seconds;
}

test('a mix: weighed, begun, slept through for 45 min, undone and done; all of it in the job', async () => {
  const page = await openBench();
  await toFirstMix(page);
  await page.getByRole('textbox', { name: 'Scale with A' }).fill('120');
  await page.getByRole('textbox', { name: 'Scale with A' }).press('Enter');
  // 2 : 1 by volume of 2.4 and 2.1 g/cm3 (generic values): 43.75 g of B to 100 g of A, 52.5 g to 120 g; the scale shows whole grams.
  await expect
    .poll(() =>
      now(page)
        .getByText(/^B alone/)
        .locator('..')
        .textContent(),
    )
    .toMatch(/B alone5[23] g/);
  await page.getByRole('textbox', { name: 'Scale with B on top' }).fill('180');
  await page.getByRole('textbox', { name: 'Scale with B on top' }).press('Enter');
  await now(page)
    .getByText(/^14 % too much B: that is the ratio by volume/)
    .waitFor();
  await page.getByRole('textbox', { name: 'Scale with B on top' }).fill('172');
  await page.getByRole('textbox', { name: 'Scale with B on top' }).press('Enter');
  await expect
    .poll(() =>
      now(page)
        .getByText(/too much B/)
        .count(),
    )
    .toBe(0);
  await page.getByRole('textbox', { name: 'Pack number of A' }).fill('L-4711');
  await press(now(page), 'Start mix');
  await expect.poll(() => timeLeft(page)).toBeGreaterThan(30 * 60);
  const before = await timeLeft(page);

  await page.clock.fastForward(45 * MINUTE);
  await page.clock.runFor(500);
  const said = page.getByRole('alert').filter({ hasText: 'Mix 1' });
  await expect.poll(() => said.textContent()).toMatch(/Mix 1: time is up since \d+ min\./);
  expect(await said.textContent()).toMatch(/The clock went on by 45 min: .* Check the mix\./);
  const after = await timeLeft(page);
  // Begun seconds are not counted, before zero nor after it.
  expect(after).toBeLessThanOrEqual(before - 45 * 60 + 1);
  expect(after).toBeGreaterThan(before - 46 * 60);

  await press(now(page), 'Done');
  await expect.poll(() => inHand(page)).toBe('Mix and fill 2');
  await page
    .getByRole('region', { name: 'Other times' })
    .getByText(/^Too soft to dress/)
    .waitFor();
  // Remembered for the next mix.
  expect(await page.getByRole('textbox', { name: 'Pack number of A' }).inputValue()).toBe('L-4711');
  await press(now(page), 'Undo: end of mix and fill 1');
  await expect.poll(() => inHand(page)).toBe('Mix and fill 1');
  expect(await timeLeft(page)).toBeLessThan(0);
  await page.clock.runFor(1000);
  await press(now(page), 'Done');
  await expect.poll(() => inHand(page)).toBe('Mix and fill 2');

  await press(page, 'Back to the job');
  const { log = [] } = await savedJob(page);
  expect(log).toHaveLength(5);
  const mix = log[4];
  expect(mix).toMatchObject({ step: 'fill:1', massA: 120, massB: 52, packA: 'L-4711' });
  expect(Date.parse(mix.done ?? '') - Date.parse(mix.started)).toBeGreaterThanOrEqual(45 * MINUTE);
});

test('a reload in the middle of a mix leaves the same time, and so does a clock that is set back', async () => {
  const page = await openBench();
  await toFirstMix(page);
  await press(now(page), 'Start mix');
  await expect.poll(() => timeLeft(page)).toBeGreaterThan(30 * 60);
  await page.clock.fastForward(MINUTE);
  await page.clock.runFor(500);
  const before = await timeLeft(page);

  await page.clock.setSystemTime((await page.evaluate(() => Date.now())) - 60 * MINUTE);
  await page.clock.runFor(1000);
  await page.getByText(/^The clock was set back by (?:1 h|59 min)/).waitFor();
  expect(await timeLeft(page)).toBeLessThanOrEqual(before);

  const wall = await page.evaluate(() => Date.now());
  const left = await timeLeft(page);
  await press(page, 'Back to the job');
  await keptOnDevice(page);
  await page.reload();
  // The page has its own clock again, which is an hour ahead of the one that was set back.
  await page.clock.setSystemTime(wall);
  await figures(page);
  await enterBench(page);
  await page.clock.runFor(500);
  const reloaded = await timeLeft(page);
  expect(reloaded).toBeLessThanOrEqual(left);
  expect(reloaded).toBeGreaterThan(left - 120);
});

test('steps are skipped with one press, and taken in hand out of turn', async () => {
  const page = await openBench();
  await press(now(page), 'Skip');
  await expect.poll(() => inHand(page)).toBe('Blast');
  await page.getByRole('region', { name: 'Log' }).getByText('Skipped').waitFor();
  await press(page, /^Still to do/);
  await press(page, 'Take in hand: Solvent wipe');
  await expect.poll(() => inHand(page)).toBe('Solvent wipe');
  await page.clock.runFor(1000);
  await press(now(page), 'Done');
  await expect.poll(() => inHand(page)).toBe('Blast');
  // Escape goes back to the job.
  await page.keyboard.press('Escape');
  await figures(page);
  expect((await savedJob(page)).log?.map(({ step }) => step.split(':')[0])).toEqual(['wash', 'wipe']);
});

for (const [device, size] of Object.entries(DEVICES)) {
  for (const colorScheme of ['light', 'dark'] as const) {
    test(`${device}, ${colorScheme}: targets take a glove, nothing is cut off, axe finds nothing`, async () => {
      const page = await openBench({ ...size, colorScheme });
      await toFirstMix(page);
      await press(now(page), 'Start mix');
      await page.clock.fastForward(45 * MINUTE);
      await page.clock.runFor(500);
      await page.getByRole('button', { name: 'Seen' }).waitFor();
      await press(page, /^Still to do/);
      expect(await tight(page)).toEqual([]);
      expect(await wider(page)).toEqual([]);
      expect(await axeFindings(page)).toEqual([]);
      if (device === 'tablet') expect(await figureSize(page)).toBeGreaterThanOrEqual(96);
    });
  }
}

test('a target that is too small, or too close to another one, is found', async () => {
  const page = await openBench();
  await page.evaluate(() => {
    const row = document.createElement('div');
    for (const [name, size] of [
      ['Small', '40px'],
      ['Close', '64px'],
    ]) {
      const button = Object.assign(document.createElement('button'), { textContent: name });
      button.style.cssText = `width: 80px; height: ${size}; margin: 0; vertical-align: top`;
      row.append(button);
    }
    document.querySelector('.bench')?.append(row);
  });
  const found = (await tight(page)).join('\n');
  expect(found).toMatch(/^Small: \d+ x 40$/m);
  expect(found).toMatch(/Small and Close are \d px apart/);
});

/** Targets under 64 px, and pairs of them less than 8 px apart. */
async function tight(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const boxes = [...document.querySelectorAll<HTMLElement>('.bench button, .bench input, .bench .switch')]
      .filter((element) => element.checkVisibility() && element.closest('.unseen') === null)
      // The switch's own box is its label; the browser's one lies hidden in it.
      .filter((element) => !(element.matches('input') && element.closest('.switch') !== null))
      .map((element) => ({
        name: element.getAttribute('aria-label') ?? element.textContent?.trim() ?? '',
        box: element.getBoundingClientRect(),
      }))
      .filter(({ box }) => box.width > 1 && box.height > 1);
    const found: string[] = [];
    for (const [i, { name, box }] of boxes.entries()) {
      if (Math.min(box.width, box.height) < 63.5)
        found.push(`${name}: ${Math.round(box.width)} x ${Math.round(box.height)}`);
      for (const other of boxes.slice(i + 1)) {
        const across = Math.max(box.left, other.box.left) - Math.min(box.right, other.box.right);
        const down = Math.max(box.top, other.box.top) - Math.min(box.bottom, other.box.bottom);
        const apart = Math.max(across, down);
        if (apart < 7.5)
          found.push(`${name} and ${other.name} are ${Math.max(0, Math.round(apart))} px apart`);
      }
    }
    return found;
  });
}

/** What reaches beyond the sides of the page, or of the card it stands in. */
async function wider(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('.bench *')]
      .filter((element) => element.checkVisibility())
      .filter((element) => {
        const card =
          element.closest('section')?.getBoundingClientRect() ?? document.body.getBoundingClientRect();
        const range = document.createRange();
        range.selectNodeContents(element);
        const { left, right, width } = range.getBoundingClientRect();
        return (
          width > 1 && element.closest('.unseen') === null && (right > card.right + 1 || left < card.left - 1)
        );
      })
      .map((element) => `${element.tagName} ${element.className}`),
  );
}

async function figureSize(page: Page): Promise<number> {
  return page
    .locator('.bench-figure')
    .first()
    .evaluate((element) => Number.parseFloat(getComputedStyle(element).fontSize));
}
