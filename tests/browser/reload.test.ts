import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { figureNow, figures, keptOnDevice, press, savedText, startOwn, type } from './app.ts';
import { openApp } from './page.ts';
import { drawAlong, expectMarks, pressAlong, ring, takeTool } from './pictures.ts';

async function brushedPlate(page: Page): Promise<void> {
  await startOwn(page);
  await takeTool(page, 'Brush', '3D');
  await type(page, 'Depth', '4');
  await drawAlong(page, await ring(page, '3D', 0.7, { turns: 0.3 }));
  await expectMarks(page, 1);
}

test('a reload in mid-stroke loses nothing but that stroke', async () => {
  const { page } = await openApp();
  await brushedPlate(page);
  const before = await figures(page);
  const text = await savedText(page);
  await keptOnDevice(page);

  await pressAlong(page, await ring(page, '3D', 0.7, { from: 0.5, turns: 0.3 }));
  await expect.poll(() => figureNow(page, 'Putty')).not.toBe(before.Putty);
  await page.reload();
  await page.mouse.up();
  await expectMarks(page, 1);
  expect(await figures(page)).toEqual(before);
  expect(await savedText(page)).toBe(text);
});

test('a change made just before a reload is there after it', async () => {
  const { page } = await openApp();
  await brushedPlate(page);
  await press(page, 'Undo: brush stroke');
  await expectMarks(page, 0);
  await page.reload();
  await expectMarks(page, 0);
  await press(page, 'Redo: brush stroke');
  await expectMarks(page, 1);
});

test('undo and redo survive a reload, step by step and byte by byte', async () => {
  const { page } = await openApp();
  await startOwn(page);
  const texts = [await savedText(page)];
  for (const [label, size] of [
    ['Outer diameter', '280'],
    ['Bore diameter', '100'],
    ['Thickness', '16'],
  ] as const) {
    await type(page, label, size);
    texts.push(await savedText(page));
  }
  await press(page, 'Undo: thickness');
  await keptOnDevice(page);

  await page.reload();
  expect(await savedText(page)).toBe(texts[2]);
  await press(page, 'Redo: thickness');
  expect(await savedText(page)).toBe(texts[3]);
  await press(page, 'Undo: thickness');
  await press(page, 'Undo: bore diameter');
  await press(page, 'Undo: outer diameter');
  expect(await savedText(page)).toBe(texts[0]);
  // The sample of the first visit is still one step away.
  await press(page, 'Undo: New job');
  await page.getByRole('button', { name: 'Start your own' }).waitFor();
});
