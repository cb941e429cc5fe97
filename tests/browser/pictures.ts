/** Hands on the two pictures of a round plate, seen from the front. */
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { goTo, press } from './app.ts';
import type { Place } from './page.ts';

export type PictureName = '3D' | 'Flat';

/** What takes the hand, and what the plate fills of it: in 3D all but a margin, on the flat picture its drawn edge. */
const PICTURES = {
  '3D': { area: '.part-area', plate: '.part-area', share: 0.89 },
  Flat: { area: '.flat-area', plate: '.flat-edges', share: 1 },
} as const;

/** Shows a picture on the step Wear, from the front, with this tool in hand. */
export async function takeTool(page: Page, tool: string, picture: PictureName): Promise<void> {
  await goTo(page, 'Wear');
  await page
    .getByRole('radiogroup', { name: 'Tool' })
    .getByRole('radio', { name: tool, exact: true })
    .click();
  const choice = page.getByRole('radio', { name: picture, exact: true });
  if ((await choice.count()) > 0) await choice.click();
  await page.locator(PICTURES[picture].area).waitFor();
  if (picture === '3D') await press(page, 'Front');
}

/**
 * Places along a ring about the shaft, counter-clockwise from the right.
 * @param radius  as a share of the plate's own
 * @param turns   how far round, 1 = once
 */
export async function ring(
  page: Page,
  picture: PictureName,
  radius: number,
  {
    from = 0,
    turns = 1,
    steps = Math.ceil(24 * turns),
  }: { from?: number; turns?: number; steps?: number } = {},
): Promise<Place[]> {
  const { plate, share } = PICTURES[picture];
  const box = await page.locator(plate).boundingBox();
  if (box === null) throw new Error(`ring: the picture ${picture} is not on the screen`);
  const reach = (Math.min(box.width, box.height) / 2) * share * radius;
  return Array.from({ length: steps + 1 }, (_, i) => {
    const angle = 2 * Math.PI * (from + (turns * i) / steps);
    return [
      box.x + box.width / 2 + reach * Math.cos(angle),
      box.y + box.height / 2 - reach * Math.sin(angle),
    ];
  });
}

/** The left button down at the first place and along the others; it stays down. */
export async function pressAlong(page: Page, [first, ...rest]: readonly Place[]): Promise<void> {
  await page.mouse.move(...first);
  await page.mouse.down();
  for (const place of rest) await page.mouse.move(...place);
}

export async function drawAlong(page: Page, places: readonly Place[]): Promise<void> {
  await pressAlong(page, places);
  await page.mouse.up();
}

/** How many marks the step Wear says there are. */
export async function expectMarks(page: Page, count: number): Promise<void> {
  const words = count === 0 ? 'No marks' : count === 1 ? '1 mark' : `${count} marks`;
  await expect.poll(() => page.locator('#step-wear').textContent()).toBe(words);
}
