import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { figures, goTo, press, STEP_LABELS } from './app.ts';
import { axeFindings, DEVICES, openApp } from './page.ts';

const NARROW = { ...DEVICES.phone, viewport: { width: 320, height: 568 } };

for (const [device, size] of Object.entries({ desktop: DEVICES.desktop, phone: DEVICES.phone })) {
  for (const colorScheme of ['light', 'dark'] as const) {
    test(`${device}, ${colorScheme}: axe finds nothing on any step`, async () => {
      const { page } = await openApp({ ...size, colorScheme, reducedMotion: 'reduce' });
      await figures(page);
      for (const step of STEP_LABELS) {
        await goTo(page, step);
        await settled(page);
        expect(await axeFindings(page), step).toEqual([]);
      }
    });
  }
}

test('axe finds nothing with all that folds open', async () => {
  const { page } = await openApp({ ...DEVICES.desktop, reducedMotion: 'reduce' });
  await figures(page);
  await goTo(page, 'Wear');
  await page
    .getByRole('list')
    .getByRole('button', { name: /^\d+ ?Patch/ })
    .click();
  expect(await axeFindings(page), 'a mark in hand').toEqual([]);
  await goTo(page, 'Fill');
  for (const name of [/worked out\?$/, /^Data sheet of/]) {
    for (const button of await page.getByRole('button', { name }).all()) await button.click();
  }
  expect(await axeFindings(page), 'data sheets').toEqual([]);
  for (const name of ['File', /^Light or dark/, 'Keys']) {
    await press(page, name);
    await page.locator('.menu-popover').waitFor();
    expect(await axeFindings(page), String(name)).toEqual([]);
    await page.keyboard.press('Escape');
    await page.locator('.menu-popover').waitFor({ state: 'detached' });
  }
});

test('a box too wide and a button too small are found', async () => {
  const { page } = await openApp(DEVICES.phone);
  await figures(page);
  await page.evaluate(() => {
    const panel = document.querySelector('.panel');
    const box = Object.assign(document.createElement('div'), { className: 'planted' });
    box.style.width = '500px';
    const button = Object.assign(document.createElement('button'), { textContent: 'Planted' });
    button.style.height = '40px';
    box.append(button);
    panel?.append(box);
  });
  expect(await wider(page)).toEqual(expect.arrayContaining(['DIV planted']));
  expect((await smallButtons(page)).join('\n')).toMatch(/^Planted: \d+ x 40$/m);
});

for (const [device, size] of Object.entries({ ...DEVICES, narrow: NARROW })) {
  test(`${device}: nothing is wider than the page, and every button takes a gloved finger`, async () => {
    const { page } = await openApp({ ...size, reducedMotion: 'reduce' });
    await figures(page);
    for (const step of STEP_LABELS) {
      await goTo(page, step);
      await settled(page);
      expect(await wider(page), `${step}: wider than the page`).toEqual([]);
      expect(await smallButtons(page), `${step}: under 44 px`).toEqual([]);
    }
  });
}

/** What loads late is there: the pictures, and on its step the sheet. */
async function settled(page: Page): Promise<void> {
  await expect.poll(() => page.getByText('Drawing the part').count()).toBe(0);
  await expect.poll(() => page.getByText(/^Drawing (?:the sheet|it anew)$/).count()).toBe(0);
}

/** Elements in sight that reach beyond the sides of the page, unless a box about them cuts or scrolls them. */
function wider(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const width = document.documentElement.clientWidth;
    const isCut = (element: Element): boolean => {
      for (let box = element.parentElement; box !== null && box !== document.body; box = box.parentElement) {
        if (getComputedStyle(box).overflowX !== 'visible' && box.getBoundingClientRect().right <= width + 0.5)
          return true;
      }
      return false;
    };
    const found = [...document.body.querySelectorAll('*')].filter((element) => {
      const { left, right, width: own, height } = element.getBoundingClientRect();
      return own > 1 && height > 1 && (right > width + 0.5 || left < -0.5) && !isCut(element);
    });
    const page = document.scrollingElement;
    const scrolls = page !== null && page.scrollWidth > page.clientWidth ? ['the page scrolls sideways'] : [];
    return [...scrolls, ...found.map((element) => `${element.tagName} ${element.className}`)];
  });
}

/** Everything that is pressed, by the place that answers to the finger. */
function smallButtons(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found = document.querySelectorAll('button, [role="radio"], label:has(input), summary, a[href]');
    return [...found].flatMap((element) => {
      const box = element.getBoundingClientRect();
      const over = getComputedStyle(element, '::after');
      const isOver =
        over.content !== 'none' && over.position === 'absolute' && element instanceof HTMLElement;
      const at = isOver ? (element.offsetParent ?? element).getBoundingClientRect() : box;
      const isUnseen = box.width <= 1 || box.height <= 1 || getComputedStyle(element).visibility === 'hidden';
      if (isUnseen || (at.width >= 43.5 && at.height >= 43.5)) return [];
      const name = element.getAttribute('aria-label') ?? element.textContent;
      return [`${name}: ${at.width.toFixed(0)} x ${at.height.toFixed(0)}`];
    });
  });
}
