import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { figures, savedJob, startOwn } from './app.ts';
import { openApp } from './page.ts';
import { expectMarks } from './pictures.ts';

/** Tab until the element with this name has the focus; every stop on the way shows where it is. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
  const passed: string[] = [];
  for (let stop = 0; stop < 80; stop++) {
    await page.keyboard.press('Tab');
    const { said, isSeen } = await page.evaluate(focused);
    expect(isSeen, `the focus is seen on "${said}"`).toBe(true);
    if (name.test(said)) return;
    passed.push(said);
  }
  throw new Error(`tabTo: no ${name} among ${passed.join(' | ')}`);
}

/** The element in focus in words, and whether it, or what stands for it, is outlined. */
function focused(): { said: string; isSeen: boolean } {
  const element = document.activeElement;
  if (!(element instanceof HTMLElement) || element === document.body) return { said: '', isSeen: true };
  const labels = element instanceof HTMLInputElement ? [...(element.labels ?? [])] : [];
  const said = element.getAttribute('aria-label') ?? labels[0]?.textContent ?? element.textContent;
  const outlined = (of: Element, pseudo?: string) => {
    const { outlineStyle, outlineWidth } = getComputedStyle(of, pseudo);
    return outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2;
  };
  const stands = [element, element.parentElement, element.closest('label'), ...labels].filter(
    (of) => of !== null,
  );
  const isSeen = stands.some((of) => outlined(of) || outlined(of, '::after') || outlined(of, '::before'));
  return { said: said.trim(), isSeen };
}

test('a job is done by keyboard alone: a pit by typing, a region left to the coat, and the sheet', async () => {
  const { page } = await openApp();
  await startOwn(page);
  await page.keyboard.press('2');
  await page.getByRole('region', { name: 'Wear', exact: true }).waitFor();
  for (const [key, tool] of [
    ['b', 'Brush'],
    ['t', 'Turn'],
  ] as const) {
    await page.keyboard.press(key);
    await page.getByRole('radio', { name: tool, checked: true }).waitFor();
  }
  await tabTo(page, /^Type a pit$/);
  await page.keyboard.press('Enter');
  await expectMarks(page, 1);

  for (const [label, text] of [
    ['Radius', '100'],
    ['Diameter', '40'],
    ['Depth', '6'],
  ] as const) {
    await tabTo(page, new RegExp(`^${label}$`));
    // The field is selected whole when it is entered: typing takes its place.
    await page.keyboard.type(text);
    await page.keyboard.press('Enter');
  }
  // A bowl holds half the cylinder about it (closed form): pi 20^2 6 / 2 = 3770 mm3, and 10 % waste.
  expect(await figures(page)).toMatchObject({ Putty: '4.15 mL', 'Deepest wear': '6.00 mm' });

  await tabTo(page, /^Remove$/);
  await page.keyboard.press('3');
  await page.getByRole('region', { name: 'Fill', exact: true }).waitFor();
  await tabTo(page, /^Fill$/);
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Space');
  await expect.poll(async () => (await figures(page)).Putty).toBe('0 mL');
  expect((await savedJob(page)).repair?.overrule).toMatchObject([{ at: 'plate:face', action: 'leave' }]);

  await page.keyboard.press('8');
  await page.getByRole('region', { name: 'Sheet', exact: true }).waitFor();
  await tabTo(page, /^Print$/);
  await page.keyboard.press('Control+z');
  await expect.poll(async () => (await figures(page)).Putty).toBe('4.15 mL');
});
