import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
  type Page,
} from 'playwright-core';
import { expect, inject, onTestFinished } from 'vitest';

export interface OpenApp {
  readonly page: Page;
  readonly context: BrowserContext;
  /** What went wrong so far, in words; a test that provokes a fault empties it. */
  readonly faults: string[];
}

/** Screen sizes the app is judged on, CSS px. */
export const DEVICES = {
  desktop: { viewport: { width: 1440, height: 900 } },
  tablet: { viewport: { width: 820, height: 1180 }, hasTouch: true },
  phone: { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true },
} as const satisfies Record<string, BrowserContextOptions>;

/** three names a class that @react-three/fiber still uses; and the software renderer remarks on reading pixels back. */
const HARMLESS = [/THREE\.Clock/, /GPU stall due to ReadPixels/];

/** ms for anything to be there or to be done: the processor draws in place of a graphics card, on cores that are busy. */
const PATIENCE = 60_000;

let connection: Promise<Browser> | undefined;

/**
 * Opens the app in a fresh profile: nothing saved, nothing cached. Closes it when the test ends, and fails the test
 * when the page asked for anything from elsewhere, broke its content policy, threw, or wrote an error or a warning to the console;
 * or when nobody would have noticed.
 * @param before  runs in the page before the app does
 */
export async function openApp(
  options: BrowserContextOptions = DEVICES.desktop,
  before?: () => void,
): Promise<OpenApp> {
  connection ??= chromium.connect(inject('browser'));
  const context = await (await connection).newContext(options);
  context.setDefaultTimeout(PATIENCE);
  const faults: string[] = [];
  onTestFinished(async () => {
    for (const page of context.pages()) await expectWatched(page, faults);
    await context.close();
    const real = faults.filter((fault) => !fault.includes(PLANTED));
    if (real.length > 0) throw new Error(`The page had faults:\n${real.join('\n')}`);
  });
  await guard(context, faults);
  // No test can answer a dialog of the system; browsers without it hand files over as downloads.
  await context.addInitScript(() => Reflect.deleteProperty(window, 'showSaveFilePicker'));
  if (before !== undefined) await context.addInitScript(before);
  const page = await context.newPage();
  await page.goto(inject('app'));
  return { page, context, faults };
}

const PLANTED = 'https://watched.example/';

/** Plants a request to elsewhere and waits until it is noticed: a guard that sleeps lets everything pass. */
async function expectWatched(page: Page, faults: readonly string[]): Promise<void> {
  const plant = () => page.evaluate((address) => fetch(address).catch(() => {}), PLANTED);
  const noticed = async () => {
    // A page that is about to become another one forgets it: then once more.
    await plant().catch(() => {});
    return faults.filter((fault) => fault.includes(PLANTED)).join('\n');
  };
  await expect.poll(noticed).toMatch(/content policy: connect-src refused|foreign request/);
}

/** Writes every foreign request, policy violation, thrown error and console error or warning of any page into `faults`. */
async function guard(context: BrowserContext, faults: string[]): Promise<void> {
  const home = new URL(inject('app')).origin;
  const isForeign = (url: URL) => !['data:', 'blob:'].includes(url.protocol) && url.origin !== home;
  context.on('request', (request) => {
    if (isForeign(new URL(request.url()))) faults.push(`foreign request: ${request.url()}`);
  });
  await context.route(isForeign, (route) => route.abort());
  context.on('weberror', (error) => faults.push(`thrown: ${error.error().stack ?? error.error().message}`));
  context.on('console', (message) => {
    const loud = message.type() === 'error' || message.type() === 'warning';
    if (loud && !HARMLESS.some((known) => known.test(message.text()))) {
      faults.push(`console ${message.type()}: ${message.text()} ${message.location().url}`);
    }
  });
  await context.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (event) => {
      console.error(
        `content policy: ${event.violatedDirective} refused ${event.blockedURI} ${event.sourceFile}`,
      );
    });
  });
}

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/**
 * What axe finds on the page as it stands, one line a finding: `rule: help: selector`. Empty = nothing found.
 * Evaluated through the debug protocol, so the content policy stays as it is.
 */
export async function axeFindings(page: Page): Promise<string[]> {
  await page.evaluate(axeSource);
  return page.evaluate(async () => {
    const { axe } = window as unknown as { axe: typeof import('axe-core') };
    const { violations } = await axe.run(document, { resultTypes: ['violations'] });
    return violations.flatMap(({ id, help, nodes }) =>
      nodes.map(({ target }) => `${id}: ${help}: ${target.join(' ')}`),
    );
  });
}

/** A place on the page, CSS px. */
export type Place = readonly [x: number, y: number];

/** Two fingers, the second landing a moment after the first as in life, moved in even steps and lifted together. */
export async function dragTwoFingers(
  page: Page,
  from: readonly [Place, Place],
  to: readonly [Place, Place],
  {
    steps = 8,
    apart = 30,
  }: { readonly steps?: number /** ms between the two landing */; readonly apart?: number } = {},
): Promise<void> {
  const session = await page.context().newCDPSession(page);
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', places: readonly Place[]) =>
    session.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: places.map(([x, y], id) => ({ x, y, id })),
    });

  await touch('touchStart', [from[0]]);
  await page.waitForTimeout(apart);
  await touch('touchStart', from);
  for (let step = 1; step <= steps; step++) {
    await touch('touchMove', [between(from[0], to[0], step / steps), between(from[1], to[1], step / steps)]);
    await page.waitForTimeout(16);
  }
  await touch('touchEnd', []);
  await session.detach();
}

/** One finger along the places, 16 ms apart. */
export async function dragFinger(page: Page, path: readonly Place[]): Promise<void> {
  const session = await page.context().newCDPSession(page);
  for (const [i, [x, y]] of path.entries()) {
    await session.send('Input.dispatchTouchEvent', {
      type: i === 0 ? 'touchStart' : 'touchMove',
      touchPoints: [{ x, y, id: 0 }],
    });
    await page.waitForTimeout(16);
  }
  await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  await session.detach();
}

function between(from: Place, to: Place, share: number): Place {
  return [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
}
