/** The app in a person's hands: everything is found by the words on the screen, and what it has in mind is what it saves. */
import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import type { JobFile } from '../../geometry/job/job-file.ts';
import type { Result } from '../../geometry/sheet/result.ts';

export const STEP_LABELS = ['Part', 'Wear', 'Fill', 'Balance', 'Clearance', 'Plan', 'Test', 'Sheet'] as const;
export type StepLabel = (typeof STEP_LABELS)[number];

export async function goTo(page: Page, step: StepLabel): Promise<void> {
  await page
    .getByRole('navigation', { name: 'Steps' })
    .getByRole('button', { name: step, exact: true })
    .click();
  await page.getByRole('region', { name: step, exact: true }).waitFor();
}

/** A press on the button of that name; several of them only where the test says in what. */
export async function press(within: Page | Locator, name: string | RegExp): Promise<void> {
  await within.getByRole('button', { name, ...(typeof name === 'string' && { exact: true }) }).click();
}

export function field(page: Page, label: string): Locator {
  return page.getByRole('textbox', { name: label, exact: true });
}

/** Types over what stands in the field, and Enter. */
export async function type(page: Page, label: string, text: string): Promise<void> {
  await field(page, label).fill(text);
  await field(page, label).press('Enter');
}

/** What stands beside the field as the reason it was not taken; '' when it was. */
export async function faultBeside(page: Page, label: string): Promise<string> {
  const box = page.locator('.field').filter({ has: field(page, label) });
  return (await box.getByRole('alert').allTextContents()).join(' ');
}

/** What becomes of the sample of the first visit: a plate of one's own. */
export async function startOwn(page: Page): Promise<void> {
  await press(page, 'Start your own');
  await expect.poll(() => field(page, 'Title of the job').inputValue()).toBe('');
}

/** The five figures as they stand on the screen, settled: not the ones in the middle of a stroke or while they are redone. */
export async function figures(page: Page): Promise<Readonly<Record<string, string>>> {
  const section = page.getByRole('region', { name: 'Figures' });
  await expect.poll(() => section.evaluate(isSettled), { message: 'the figures settle' }).toBe('settled');
  return section.evaluate((element) =>
    Object.fromEntries(
      [...element.querySelectorAll('.figure')].map((figure) => [
        figure.querySelector('.figure-roomy')?.textContent ?? '',
        figure.querySelector('.figure-value')?.textContent ?? '',
      ]),
    ),
  );
}

/** The sentence that is read out holds the estimate's own figures. */
function isSettled(section: Element): string {
  if (section.getAttribute('aria-busy') !== 'false') return 'busy';
  const spoken = section.querySelector('[role="status"]')?.textContent ?? '';
  const figures = [...section.querySelectorAll('.figure')].map((figure) => {
    const text = (part: string) => figure.querySelector(part)?.textContent ?? '';
    return `${text('.figure-roomy')} ${text('.figure-value')}`.trim();
  });
  const isSame = spoken.split(', ').every((words, i) => words.trim() === figures[i]);
  return figures.length === 5 && isSame ? 'settled' : `${figures.join(', ')} while ${spoken} is read out`;
}

/** A figure as it stands now, also in the middle of a stroke. */
export async function figureNow(page: Page, label: string): Promise<string> {
  const figure = page.locator('.figure').filter({ has: page.getByRole('heading', { name: label }) });
  return (await figure.locator('.figure-value').textContent()) ?? '';
}

/** The figure with its unit shows the value to its last digit. */
export function expectShown(shown: string, values: readonly number[]): void {
  const figures = shown.match(/\d+(?:\.\d+)?/g) ?? [];
  expect(figures, shown).toHaveLength(values.length);
  for (const [i, text] of figures.entries()) {
    const digits = text.split('.')[1]?.length ?? 0;
    expect(Number(text), shown).toBeCloseTo(values[i], digits);
  }
}

/** The text of the job as it goes into a file. */
export async function savedText(page: Page): Promise<string> {
  // Keys are answered once the app is there, and with the first figures it is.
  await page.locator('.figure').first().waitFor();
  return downloadOf(page, () => page.keyboard.press('Control+s'));
}

/** The text of the file the app hands over for what is done. */
export async function downloadOf(page: Page, act: () => Promise<void>): Promise<string> {
  const [download] = await Promise.all([page.waitForEvent('download'), act()]);
  const blocks: Buffer[] = [];
  for await (const block of await download.createReadStream()) blocks.push(block);
  return Buffer.concat(blocks).toString('utf8');
}

export async function savedJob(page: Page): Promise<JobFile> {
  return JSON.parse(await savedText(page)) as JobFile;
}

/** Through File and the browser's own chooser. */
export async function openFile(page: Page, name: string, text: string): Promise<void> {
  await press(page, 'File');
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('menuitem', { name: 'Open a file' }).click();
  await (await chooser).setFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
}

/** From the desk onto the window. */
export async function dropFile(page: Page, name: string, text: string): Promise<void> {
  await page.evaluate(
    ([fileName, content]) => {
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(new File([content], fileName, { type: 'application/json' }));
      for (const kind of ['dragenter', 'dragover', 'drop']) {
        const event = new DragEvent(kind, { dataTransfer, bubbles: true, cancelable: true });
        document.querySelector('main')?.dispatchEvent(event);
      }
    },
    [name, text],
  );
}

/** What the app says above the work. */
export async function notices(page: Page): Promise<string> {
  return (await page.getByRole('region', { name: 'Notices' }).textContent()) ?? '';
}

/** Waits until the device keeps what was done last. */
export async function keptOnDevice(page: Page): Promise<void> {
  await page.getByText(/^Saved on this device/).waitFor();
}

/** The headless command's answer to the same file. */
export async function commandResult(text: string): Promise<Result> {
  const folder = mkdtempSync(join(tmpdir(), 'fettle-'));
  try {
    const file = join(folder, 'same.job.json');
    writeFileSync(file, text);
    const command = join(import.meta.dirname, '../../geometry/run-command.mjs');
    const { stdout } = await promisify(execFile)(process.execPath, [command, file, '--json'], {
      maxBuffer: 64 * 1024 * 1024,
    });
    return JSON.parse(stdout) as Result;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
