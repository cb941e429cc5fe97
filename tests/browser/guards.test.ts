import { expect, test } from 'vitest';
import { axeFindings, DEVICES, dragTwoFingers, openApp } from './page.ts';

/** The guards every journey relies on, each shown to catch what it is for. */

test('the page has its root and WebGL 2', async () => {
  const { page } = await openApp();
  expect(await page.locator('#root').count()).toBe(1);
  const version = await page.evaluate(() =>
    document.createElement('canvas').getContext('webgl2')?.getParameter(0x1f02),
  );
  expect(version).toMatch(/^WebGL 2\.0/);
});

test('a foreign request is stopped and noticed', async () => {
  const { page, faults } = await openApp();
  await page.evaluate(() => fetch('https://elsewhere.example/map.png').catch(() => {}));
  // The policy refuses it before it becomes a request; what the policy does not cover, such as going elsewhere, is below.
  await expect
    .poll(() => faults.join('\n'))
    .toMatch(/content policy: connect-src refused https:\/\/elsewhere\.example/);
  faults.length = 0;

  await page.goto('https://elsewhere.example/').catch(() => {});
  expect(faults.join('\n')).toMatch(/foreign request: https:\/\/elsewhere\.example/);
  faults.length = 0;
});

test('an inline style element and an inline script are refused and noticed', async () => {
  const { page, faults } = await openApp();
  const ran = await page.evaluate(() => {
    document.head.append(
      Object.assign(document.createElement('style'), { textContent: 'body { color: red }' }),
    );
    document.head.append(
      Object.assign(document.createElement('script'), { textContent: 'window.ran = true' }),
    );
    return 'ran' in window;
  });
  expect(ran).toBe(false);
  await expect.poll(() => faults.join('\n')).toMatch(/content policy: style-src-elem/);
  expect(faults.join('\n')).toMatch(/content policy: script-src-elem/);
  faults.length = 0;
});

test('a console error and a thrown error are noticed', async () => {
  const { page, faults } = await openApp();
  await page.evaluate(() => {
    console.error('a planted error');
    setTimeout(() => {
      throw new Error('a planted throw');
    });
  });
  await expect.poll(() => faults.length).toBe(2);
  expect(faults.join('\n')).toMatch(/console error: a planted error/);
  expect(faults.join('\n')).toMatch(/thrown: Error: a planted throw/);
  faults.length = 0;
});

test('axe finds a button without a name', async () => {
  const { page } = await openApp();
  await page.evaluate(() => document.body.append(document.createElement('button')));
  expect((await axeFindings(page)).join('\n')).toMatch(/button-name/);
});

test('two fingers arrive as two pointers', async () => {
  const { page } = await openApp(DEVICES.tablet);
  await page.evaluate(() => {
    const pad = Object.assign(document.createElement('div'), { id: 'pad' });
    pad.style.cssText = 'position: fixed; inset: 0; z-index: 9999; touch-action: none';
    pad.addEventListener('pointerdown', (event) => {
      pad.dataset.down = `${pad.dataset.down ?? ''}${event.pointerType} `;
    });
    document.body.append(pad);
  });
  await dragTwoFingers(
    page,
    [
      [300, 300],
      [500, 300],
    ],
    [
      [250, 300],
      [550, 300],
    ],
  );
  expect(await page.locator('#pad').getAttribute('data-down')).toBe('touch touch ');
});
