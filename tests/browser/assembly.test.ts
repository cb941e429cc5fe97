import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { figures, goTo, openFile, press } from './app.ts';
import { axeFindings, DEVICES, dragFinger, dragTwoFingers, openApp } from './page.ts';

const sample = readFileSync(join(import.meta.dirname, '../../samples/facing-pair.job.json'), 'utf8');

async function openPair(page: Page): Promise<void> {
  await openFile(page, 'pair.job.json', sample);
  await goTo(page, 'Clearance');
  await page.locator('.assembly canvas').waitFor();
}

const slider = (page: Page, label: RegExp): Locator => page.getByRole('slider', { name: label });
const TURNED = /^Rotor turned/;

/** Counts what the graphics chip is asked for; contexts that were given back do not count. */
function countOnChip(): void {
  const counts = { draws: 0, contexts: [] as WebGL2RenderingContext[] };
  Object.assign(window, { counts });
  const { getContext } = HTMLCanvasElement.prototype;
  HTMLCanvasElement.prototype.getContext = function (this: HTMLCanvasElement, ...given: never[]) {
    const context: unknown = Reflect.apply(getContext, this, given);
    if (context instanceof WebGL2RenderingContext && !counts.contexts.includes(context))
      counts.contexts.push(context);
    return context as never;
  } as typeof getContext;
  const chip = WebGL2RenderingContext.prototype;
  const { drawElements } = chip;
  chip.drawElements = function (...given) {
    counts.draws++;
    Reflect.apply(drawElements, this, given);
  };
}

const counted = (page: Page) =>
  page.evaluate(() => {
    const { counts } = window as unknown as {
      counts: { draws: number; contexts: WebGL2RenderingContext[] };
    };
    return {
      draws: counts.draws,
      contexts: counts.contexts.filter((context) => !context.isContextLost()).length,
    };
  });

/** After that many frames of the screen. */
const afterFrames = (page: Page, frames: number) =>
  page.evaluate(
    (count) =>
      new Promise<void>((done) => {
        const next = (left: number) => (left === 0 ? done() : requestAnimationFrame(() => next(left - 1)));
        next(count);
      }),
    frames,
  );

test('plate and impeller stand assembled, are pulled apart, cut and turned by keyboard, and rest without a frame', async () => {
  const { page } = await openApp(DEVICES.desktop, countOnChip);
  await openPair(page);
  const apart = slider(page, /At the true gap|Pulled apart/);
  await apart.focus();
  for (let i = 0; i < 3; i++) await page.keyboard.press('ArrowRight');
  await page.getByText('Pulled apart 3 mm').waitFor();
  await press(page, 'Together');
  await page.getByText('At the true gap').waitFor();

  const cut = page.getByRole('button', { name: 'Cut open', exact: true });
  expect(await cut.getAttribute('aria-pressed')).toBe('true');
  await cut.click();
  expect(await cut.getAttribute('aria-pressed')).toBe('false');
  await slider(page, /^Cut at/).focus();
  await page.keyboard.press('ArrowRight');
  await page.getByText('Cut at 19°').waitFor();
  // A cut that is turned is open.
  expect(await cut.getAttribute('aria-pressed')).toBe('true');

  await figures(page);
  const restsDrawn = async () => {
    const before = await counted(page);
    await afterFrames(page, 30);
    return (await counted(page)).draws - before.draws;
  };
  await expect.poll(restsDrawn).toBe(0);
  expect((await counted(page)).draws).toBeGreaterThan(0);
  expect((await axeFindings(page)).filter((finding) => finding.includes('assembly'))).toEqual([]);
});

test('the tight spot is turned into the cut, coated, and named with the figure of the estimate', async () => {
  const { page } = await openApp();
  await openPair(page);
  const { 'Least clearance': least } = await figures(page);
  await press(page, 'Show the tight spot');
  const label = page.locator('.tight-spot text');
  await expect.poll(() => label.textContent()).toBe(`Tightest ${least}`);
  await expect.poll(() => label.isVisible()).toBe(true);
  expect(
    await page
      .getByRole('radiogroup', { name: 'Gap drawn' })
      .getByRole('radio', { name: 'Coated' })
      .getAttribute('aria-checked'),
  ).toBe('true');
  expect(await page.locator('.tight-spot circle:not([hidden])').count()).toBe(2);
  // Both places in the middle of the picture, one over the other.
  const [box, ...dots] = await Promise.all([
    page.locator('.assembly-picture').boundingBox(),
    ...[0, 1].map((i) => page.locator('.tight-spot circle').nth(i).boundingBox()),
  ]);
  for (const dot of dots) {
    expect(
      dot !== null && box !== null && Math.abs(dot.x + dot.width / 2 - box.x - box.width / 2),
    ).toBeLessThan(40);
  }
  // Closed, metal stands before it.
  await press(page, 'Cut open');
  await expect.poll(() => label.isVisible()).toBe(false);
});

test('one finger turns the view, and the rotor when it is to; two fingers come nearer either way', async () => {
  const { page } = await openApp(DEVICES.tablet);
  await openPair(page);
  await page.getByText('Rotor turned 0°').waitFor();
  const box = await page.locator('.assembly-picture').boundingBox();
  if (box === null) throw new Error('the picture is not on the screen');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  const across = [0, 20, 40, 60].map((dx) => [x + dx, y] as const);
  const eye = () => page.locator('.assembly-name').first().getAttribute('y');
  await dragFinger(
    page,
    across.map(([px], i) => [px, y + 10 * i] as const),
  );
  expect(await slider(page, TURNED).inputValue()).toBe('0');

  await press(page, 'By hand');
  const before = await eye();
  await dragFinger(page, across);
  await expect.poll(async () => Number(await slider(page, TURNED).inputValue())).toBeGreaterThan(5);
  expect(await eye()).toBe(before);
  const turned = await slider(page, TURNED).inputValue();
  await dragTwoFingers(
    page,
    [
      [x - 60, y],
      [x + 60, y],
    ],
    [
      [x - 140, y],
      [x + 140, y],
    ],
  );
  await expect.poll(eye).not.toBe(before);
  expect(Math.abs(Number(await slider(page, TURNED).inputValue()) - Number(turned))).toBeLessThanOrEqual(1);
});

test('the picture follows what the job asks and what is undone, and stands alone with the reason', async () => {
  const { page } = await openApp();
  await goTo(page, 'Clearance');
  await page.getByText('Add an impeller, and both stand assembled here.').waitFor();
  await openPair(page);
  await press(page, /^Undo/);
  await page.getByText('Add an impeller, and both stand assembled here.').waitFor();
  await press(page, /^Redo/);
  await page.locator('.assembly canvas').waitFor();
});

test('coming and going more often than a browser holds pictures gives every picture back', async () => {
  const { page } = await openApp(DEVICES.phone, countOnChip);
  await openPair(page);
  for (let i = 0; i < 10; i++) {
    await goTo(page, 'Part');
    await page.locator('.part-view canvas').waitFor();
    await goTo(page, 'Clearance');
    await page.locator('.assembly canvas').waitFor();
  }
  await expect.poll(async () => (await counted(page)).contexts).toBeLessThanOrEqual(2);
});
