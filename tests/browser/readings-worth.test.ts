import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { JobFile } from '../../geometry/job/job-file.ts';
import { franke, seeded } from '../geometry/depth/kriging/fields.ts';
import { commandResult, figureNow, goTo, openFile, press, savedJob, savedText } from './app.ts';
import { axeFindings, openApp } from './page.ts';

const sample = readFileSync(join(import.meta.dirname, '../../samples/gauged-plate.job.json'), 'utf8');

test.each(['light', 'dark'] as const)(
  'what readings are worth stands beside them, as the command has it, %s',
  async (colorScheme) => {
    const { page } = await openApp({ colorScheme });
    await openFile(page, 'gauged.job.json', sample);
    await goTo(page, 'Wear');
    await page.getByRole('radio', { name: 'Readings' }).click();
    await press(page, /^Open the table/);
    const worth = page.getByRole('region', { name: 'What the readings are worth' });
    const [{ readings }] = (await commandResult(await savedText(page))).parts;
    await worth.getByText(`Fill ±${(2 * readings[0].fillError).toFixed(2)} mL`).waitFor();
    await worth.getByText('Enough.').waitFor();
    await worth.getByRole('button', { name: 'How the depth varies' }).click();
    await worth.locator('.choice', { hasText: 'Rough' }).click();
    await expect
      .poll(async () => JSON.stringify((await savedJob(page)).parts[0].wear[0]))
      .toContain('exponential');
    expect(await axeFindings(page)).toEqual([]);
    // The place that would tell most waits for its depth.
    await worth.getByRole('button', { name: 'Read it' }).click();
    await page.getByRole('textbox', { name: 'Depth here' }).waitFor();
  },
);

test('four thousand readings show how far they are, can be stopped, and lose nothing', async () => {
  const { page } = await openApp();
  const job = JSON.parse(sample) as JobFile;
  const random = seeded(1);
  const points = Array.from({ length: 4000 }, (): [number, number, number] => {
    const [r, a] = [80 + 90 * random(), 360 * random()];
    const [x, y] = [r * Math.cos((a * Math.PI) / 180), r * Math.sin((a * Math.PI) / 180)];
    return [r, a, 4 * franke((x + 180) / 360, (y + 180) / 360)];
  });
  const many = {
    ...job,
    parts: job.parts.map((part) => ({ ...part, wear: [{ kind: 'readings', face: 'face', points }] })),
  };
  await openFile(page, 'many.job.json', JSON.stringify(many));
  await page.getByText('Working out the gauge readings').waitFor();
  await press(page, 'Stop');
  await page.getByText('Working out the gauge readings').waitFor({ state: 'detached' });
  const [{ wear }] = (await savedJob(page)).parts;
  expect(wear[0].kind === 'readings' && wear[0].points.length).toBe(4000);
  // The next change is worked out again.
  await press(page, /^Undo/);
  await expect.poll(() => page.locator('.figures').getAttribute('aria-busy')).toBe('false');
  expect(Number.parseFloat(await figureNow(page, 'Putty'))).toBeGreaterThan(10);
});
