import { gzipSync } from 'node:zlib';
import { expect, inject, test } from 'vitest';
import { goTo } from './app.ts';
import { openApp } from './page.ts';

/** Our own budgets, gzip: a start in 2 s on a tablet over a slow line, and 3D packages that cannot be much smaller. */
const FIRST_PAGE_KB = 200;
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

test('once the first page stands, every step opens at once, also when the line has gone', async () => {
  const { page, context } = await openApp(undefined, () => {
    new MutationObserver(() => {
      const isWaiting = /Opening the step|Drawing the face/.test(document.body?.textContent ?? '');
      if (isWaiting) Object.assign(window, { hasWaited: true });
    }).observe(document, { childList: true, subtree: true });
  });
  await page.locator('canvas').first().waitFor();
  await page.waitForLoadState('networkidle');
  await context.setOffline(true);
  await goTo(page, 'Wear');
  await page.getByRole('radio', { name: 'Brush' }).waitFor();
  await page.getByRole('button', { name: 'Whole face' }).waitFor();
  await goTo(page, 'Fill');
  await page.getByRole('heading', { name: 'Damage' }).waitFor();
  await goTo(page, 'Sheet');
  await page.getByRole('article').waitFor();
  expect(await page.evaluate(() => Reflect.get(window, 'hasWaited'))).toBeUndefined();
});

test('a step that is not there yet, or could not be fetched, says so and keeps the rest of the screen', async () => {
  const { page, context, faults } = await openApp();
  const fillPanel = /\/FillPanel-[^/]*\.js$/;
  let letGo = () => {};
  const held = new Promise<void>((done) => {
    letGo = done;
  });
  await context.route(fillPanel, async (route) => {
    await held;
    await route.continue();
  });
  await page.reload();
  await goTo(page, 'Fill');
  await page.getByText('Opening the step').waitFor();
  letGo();
  await page.getByRole('heading', { name: 'Damage' }).waitFor();

  await context.unroute(fillPanel);
  await context.route(fillPanel, (route) => route.abort());
  await page.reload();
  await goTo(page, 'Fill');
  await page.getByRole('alert').getByText('This could not be loaded.').waitFor();
  await goTo(page, 'Wear');
  await page.getByRole('radio', { name: 'Brush' }).waitFor();
  faults.splice(0);
});
