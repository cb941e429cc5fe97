import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { openFile, STEP_LABELS, type StepLabel } from '../browser/app.ts';
import { DEVICES, openApp } from '../browser/page.ts';

/** Pictures of every step, to be looked at: .build/shots/{step}-{device}-{scheme}.png, those of two parts from `pair-`; on a phone also the whole page. */
const folder = join(import.meta.dirname, '../../.build/shots');
const pair = readFileSync(join(import.meta.dirname, '../../samples/facing-pair.job.json'), 'utf8');
/** Steps that a plate alone leaves empty. */
const OF_PAIR: readonly StepLabel[] = ['Balance', 'Clearance', 'Plan', 'Test'];

mkdirSync(folder, { recursive: true });

for (const [device, size] of Object.entries(DEVICES)) {
  for (const colorScheme of ['light', 'dark'] as const) {
    test(`${device}, ${colorScheme}`, async () => {
      const { page } = await openApp({ ...size, colorScheme, reducedMotion: 'reduce' });
      const shoot = async (step: StepLabel, name: string) => {
        await page.getByRole('button', { name: step, exact: true }).click();
        await page.waitForLoadState('networkidle');
        // The estimate comes from its worker and the part is drawn on demand: give both a moment.
        await page.waitForTimeout(1500);
        const path = join(folder, `${name}${step.toLowerCase()}-${device}-${colorScheme}.png`);
        const picture = await page.screenshot({ path });
        if (device === 'phone')
          await page.screenshot({ path: path.replace('.png', '-whole.png'), fullPage: true });
        expect(picture.length).toBeGreaterThan(5_000);
      };
      for (const step of STEP_LABELS) await shoot(step, '');
      await openFile(page, 'facing-pair.job.json', pair);
      for (const step of OF_PAIR) await shoot(step, 'pair-');
    });
  }
}
