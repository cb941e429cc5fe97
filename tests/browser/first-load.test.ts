import { gzipSync } from 'node:zlib';
import { expect, inject, test } from 'vitest';
import { openApp } from './page.ts';

/** Our own budgets, gzip: a start in 2 s on a tablet over a slow line, and 3D packages that cannot be much smaller. */
const FIRST_PAGE_KB = 240;
const VIEW_KB = 270;

async function kilobytes(address: string): Promise<number> {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address} answered ${answer.status}`);
  return gzipSync(Buffer.from(await answer.arrayBuffer())).byteLength / 1000;
}

test('the first page does not wait for the 3D packages, and both stay within their budgets', async () => {
  const home = inject('app');
  const text = await (await fetch(home)).text();
  const first = [...text.matchAll(/<(?:script|link)[^>]+(?:src|href)="([^"]+\.(?:js|css))"/g)].map(
    ([, path]) => path,
  );
  expect(first.length).toBeGreaterThan(1);
  expect(first.filter((path) => path.includes('three'))).toEqual([]);
  const sizes = await Promise.all(first.map((path) => kilobytes(new URL(path, home).href)));
  expect(sizes.reduce((sum, size) => sum + size, 0)).toBeLessThan(FIRST_PAGE_KB);

  const { page } = await openApp();
  await page.locator('canvas').first().waitFor();
  const scripts = await page.evaluate(() => performance.getEntriesByType('resource').map(({ name }) => name));
  const view = scripts.filter((name) => /\/three-[^/]*\.js$/.test(name));
  expect(view).toHaveLength(1);
  expect(await kilobytes(view[0])).toBeLessThan(VIEW_KB);
});
