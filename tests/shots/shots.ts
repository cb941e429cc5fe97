import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { DEVICES, openApp } from '../browser/page.ts';

/** Pictures of every step, to be looked at: .build/shots/{step}-{device}-{scheme}.png, on a phone also the whole page. */
const folder = join(import.meta.dirname, '../../.build/shots');
const STEPS = ['Part', 'Wear', 'Fill', 'Balance', 'Clearance', 'Plan', 'Test', 'Sheet'] as const;

mkdirSync(folder, { recursive: true });

for (const [device, size] of Object.entries(DEVICES)) {
  for (const colorScheme of ['light', 'dark'] as const) {
    test(`${device}, ${colorScheme}`, async () => {
      const { page } = await openApp({ ...size, colorScheme, reducedMotion: 'reduce' });
      for (const step of STEPS) {
        await page.getByRole('button', { name: step, exact: true }).click();
        await page.waitForLoadState('networkidle');
        // The estimate comes from its worker and the part is drawn on demand: give both a moment.
        await page.waitForTimeout(1500);
        const path = join(folder, `${step.toLowerCase()}-${device}-${colorScheme}.png`);
        const picture = await page.screenshot({ path });
        if (device === 'phone')
          await page.screenshot({ path: path.replace('.png', '-whole.png'), fullPage: true });
        expect(picture.length).toBeGreaterThan(5_000);
      }
    });
  }
}
