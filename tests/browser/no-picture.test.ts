import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { figures, goTo, press, startOwn, type } from './app.ts';
import { openApp } from './page.ts';
import { expectMarks } from './pictures.ts';

test('without WebGL the app says why, and sizes, marks, figures and the sheet work all the same', async () => {
  const { page } = await openApp(undefined, () => {
    const original = HTMLCanvasElement.prototype.getContext as (
      this: HTMLCanvasElement,
      kind: string,
    ) => unknown;
    HTMLCanvasElement.prototype.getContext = function (this: HTMLCanvasElement, kind: string) {
      return kind.startsWith('webgl') ? null : original.call(this, kind);
    } as typeof HTMLCanvasElement.prototype.getContext;
  });
  await page.getByText(/This device cannot draw in three dimensions/).waitFor();
  await startOwn(page);
  await goTo(page, 'Wear');
  await press(page, 'Type a pit');
  await type(page, 'Depth', '6');
  await type(page, 'Diameter', '40');
  await expectMarks(page, 1);
  expect(await figures(page)).toMatchObject({ Putty: '4.15 mL', 'Deepest wear': '6.00 mm' });
  await goTo(page, 'Sheet');
  await page
    .getByRole('article')
    .getByText(/^Mix 4\.15 mL of putty/)
    .waitFor();
});

test('a lost picture comes back as it was', async () => {
  const { page } = await openApp();
  await figures(page);
  const canvas = page.locator('.part-view canvas');
  await canvas.waitFor();
  const before = await still(page);
  await canvas.evaluate((element: HTMLCanvasElement) => {
    const extension = element.getContext('webgl2')?.getExtension('WEBGL_lose_context');
    Object.assign(window, { lost: extension });
    extension?.loseContext();
  });
  await expect.poll(async () => difference(page, before, await shot(page))).toBeGreaterThan(0.1);
  await page.evaluate(() => (window as unknown as { lost: WEBGL_lose_context }).lost.restoreContext());
  await expect.poll(async () => difference(page, before, await shot(page))).toBeLessThan(0.01);
});

async function shot(page: Page): Promise<string> {
  return (await page.locator('.part-view').screenshot()).toString('base64');
}

/** The picture once two in a row are alike and show something. */
async function still(page: Page): Promise<string> {
  let last = '';
  await expect
    .poll(
      async () => {
        const [before, now] = [last, await shot(page)];
        last = now;
        return before === now && (await difference(page, now, null)) > 0.1;
      },
      { interval: 500 },
    )
    .toBe(true);
  return last;
}

/** Share of the pixels in which two pictures differ so that it is seen; null stands for one colour all over, that of the corner. */
function difference(page: Page, a: string, b: string | null): Promise<number> {
  return page.evaluate(
    async (pictures) => {
      const [first, second] = await Promise.all(
        pictures.map(async (picture) => {
          if (picture === null) return null;
          const image = new Image();
          image.src = `data:image/png;base64,${picture}`;
          await image.decode();
          const canvas = new OffscreenCanvas(image.width, image.height);
          const context = canvas.getContext('2d');
          context?.drawImage(image, 0, 0);
          return context?.getImageData(0, 0, image.width, image.height).data ?? null;
        }),
      );
      if (first === null) throw new Error('difference: no picture');
      let different = 0;
      for (let i = 0; i < first.length; i += 4) {
        const far = [0, 1, 2].some(
          (k) => Math.abs(first[i + k] - (second === null ? first[k] : second[i + k])) > 24,
        );
        if (far) different++;
      }
      return different / (first.length / 4);
    },
    [a, b],
  );
}
