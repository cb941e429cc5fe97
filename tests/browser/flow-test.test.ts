import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { commandResult, field, goTo, press, savedText, startOwn, type } from './app.ts';
import { axeFindings, DEVICES, openApp } from './page.ts';

/** As found, m3/h, m, kW: about 60 % at 90 m3/h. */
const FOUND = [
  ['60', '14', '4.15'],
  ['90,5', '12', '4.9'],
  ['110', '10.3', '5.5'],
] as const;
/** After the repair, from a spreadsheet that writes a comma: about 69 %. */
const AFTER = 'Q (m3/h);H (m);P (kW)\n60;15,3;3,96\n90;13,2;4,68\nabc;12;5\n110;11,5;5,29';

const verdict = (page: Page) => page.getByRole('region', { name: 'Verdict', exact: true });

/** What the runs say of each other, apart from the picture that says it too. */
const lead = (page: Page) => verdict(page).locator('.test-verdict');

async function startTest(page: Page): Promise<void> {
  await startOwn(page);
  await goTo(page, 'Test');
  await press(page, 'Start a flow test');
  await page.getByText('Type the duty first.').waitFor();
  await field(page, 'Duty of the pump').fill('90');
  await press(page, 'Start a flow test');
  await lead(page).getByText('No runs yet').waitFor();
}

/** By keyboard alone: Enter goes along the row, and from its end adds the point and begins the next. */
async function typePoints(page: Page): Promise<void> {
  await field(page, 'Flow of a new point, the next run').focus();
  for (const [flow, head, power] of FOUND) {
    for (const text of [flow, head, power]) {
      await page.keyboard.type(text);
      await page.keyboard.press('Enter');
    }
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.getAttribute('aria-label')))
      .toBe('Flow of a new point, run 1');
  }
}

async function pasteAfter(page: Page): Promise<void> {
  await press(page, 'Add a run');
  const runs = page.getByRole('region', { name: 'Runs' });
  await runs.getByRole('radiogroup', { name: 'When it was made' }).getByText('After repair').waitFor();
  await runs.locator('.new-run').getByRole('button', { name: 'Paste a table' }).click();
  await field(page, 'Columns from a spreadsheet, the next run').fill(AFTER);
  await page.getByText('Row 4, flow: "abc" is not a number.').waitFor();
  await press(page, 'Take 3 points');
}

test('runs typed by keyboard and pasted: the verdict on the screen is that of the command, and undo takes one step at a time', async () => {
  const { page, faults } = await openApp();
  await startTest(page);
  await typePoints(page);
  await lead(page).getByText('No run after the repair yet.').waitFor();
  await pasteAfter(page);
  await lead(page).getByText('It gained efficiency').waitFor();

  const { flowTest } = await commandResult(await savedText(page));
  const { before, after, gain } = known(flowTest?.comparison);
  expect([before, after]).toEqual([expect.closeTo(60, 0), expect.closeTo(69, 0)]);
  await lead(page)
    .getByText(`from ${before.toFixed(1)} to ${after.toFixed(1)} %: a gain of ${gain.toFixed(1)} points`)
    .waitFor();
  expect(flowTest?.runs[0].points).toHaveLength(3);
  await page.getByRole('img', { name: 'Curves of the flow test' }).waitFor();

  // Hours and price make money of what is saved.
  await page.getByText('The hours it runs are known').click();
  await page.getByText('The price of energy is known').click();
  const saving = known((await commandResult(await savedText(page))).flowTest?.saving);
  await verdict(page).locator('.worth').getByText('Money a year').waitFor();
  await expect
    .poll(() => verdict(page).locator('.worth').textContent())
    .toContain(String(Math.round(saving.money ?? Number.NaN)));

  await goTo(page, 'Sheet');
  await page.getByRole('heading', { name: 'Flow test', exact: true }).waitFor();

  await goTo(page, 'Test');
  for (const label of [/^Undo: price/, /^Undo: hours/, /^Undo: add a run/]) await press(page, label);
  await lead(page).getByText('No run after the repair yet.').waitFor();
  await press(page, /^Undo: add a point/);
  await expect.poll(async () => known((await savedJobRuns(page))[0]).points.length).toBe(2);
  expect(faults).toEqual([]);
});

test('what is not taken stays, with its reason beside it, also when the step is left', async () => {
  const { page } = await openApp();
  await startTest(page);
  await type(page, 'Flow of a new point, the next run', '60');
  await type(page, 'Head of a new point, the next run', 'high');
  await type(page, 'Power of a new point, the next run', '4.2');
  await page.getByText('Head: "high" is not a number.').waitFor();
  await goTo(page, 'Plan');
  await goTo(page, 'Test');
  expect(await field(page, 'Head of a new point, the next run').inputValue()).toBe('high');
  await type(page, 'Head of a new point, the next run', '14');
  await field(page, 'Power of a new point, the next run').press('Enter');
  await field(page, 'Head of point 1, run 1').waitFor();
  await type(page, 'Head of point 1, run 1', '-3');
  await page.getByText(/head: -3 is not a head in m/).waitFor();
  expect(await field(page, 'Head of point 1, run 1').inputValue()).toBe('-3');
  expect(known((await savedJobRuns(page))[0]).points[0].head).toBe(14);
});

test('on a phone every control is large enough and nothing is wrong for a reader', async () => {
  const { page } = await openApp(DEVICES.phone);
  await startTest(page);
  await typePoints(page);
  expect(await axeFindings(page)).toEqual([]);
  const small = await page.getByRole('region', { name: 'Test', exact: true }).evaluate((panel) =>
    [
      ...panel.querySelectorAll('button, input:not([type="radio"]):not([type="checkbox"]), label.choice'),
    ].flatMap((control) => {
      const { width, height } = control.getBoundingClientRect();
      return width > 0 && Math.min(width, height) < 43.9 ? [control.outerHTML.slice(0, 80)] : [];
    }),
  );
  expect(small).toEqual([]);
});

async function savedJobRuns(page: Page) {
  const job = JSON.parse(await savedText(page)) as { flowTest?: { runs: { points: { head: number }[] }[] } };
  return job.flowTest?.runs ?? [];
}

function known<T>(value: T | null | undefined): T {
  if (value === null || value === undefined) throw new Error('flow-test.test: needs a value, got none');
  return value;
}
