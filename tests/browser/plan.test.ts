import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { downloadOf, figures, goTo, press, savedJob, type } from './app.ts';
import { axeFindings, DEVICES, openApp } from './page.ts';

/** Empties a field of the browser's own for a time, or fills it as a wheel or a calendar would. */
async function setTime(page: Page, label: string, time: string): Promise<void> {
  await page.getByLabel(label, { exact: true }).fill(time);
  await page.keyboard.press('Enter');
}

test('damp air turns go into wait with its reasons, and the job keeps what was read', async () => {
  const { page } = await openApp();
  await figures(page);
  await goTo(page, 'Plan');
  const weather = page.getByRole('region', { name: 'Weather' });
  await weather.getByText('Go', { exact: true }).waitFor();
  await weather.getByText('When it was read is not known.').waitFor();

  await type(page, 'Humidity', '95');
  await weather.getByText('Wait', { exact: true }).waitFor();
  await weather.getByText(/The humidity of 95 % is over 85 %/).waitFor();
  await weather.getByText(/Warm the part to .* °C or more/).waitFor();
  await press(page, 'Read just now');
  await weather.getByText('Taken just now.').waitFor();
  const { climate } = await savedJob(page);
  expect(climate).toMatchObject({ humidity: 95 });
  expect(climate?.takenAt).toMatch(/^\d{4}-\d\d-\d\dT\d\d:\d\d$/);

  await setTime(page, 'Time of the reading', '2026-01-05T06:00');
  await weather.getByText(/^Taken \d+ (?:h|days) ago: read again\.$/).waitFor();
  await press(page, 'Clear: Time of the reading');
  await weather.getByText('When it was read is not known.').waitFor();
  expect(Object.keys((await savedJob(page)).climate ?? {})).not.toContain('takenAt');
});

test('hours from zero become clock times once the day has a start, and go into a calendar', async () => {
  const { page } = await openApp();
  await figures(page);
  await goTo(page, 'Plan');
  const steps = page.getByRole('region', { name: 'Steps of the work' });
  await expect.poll(() => steps.getByRole('listitem').first().textContent()).toMatch(/^\+0:00/);
  expect(await page.getByRole('button', { name: 'Save calendar' }).isDisabled()).toBe(true);

  await setTime(page, 'Start of the work', '2026-12-01T07:00');
  await setTime(page, 'Shift ends', '15:30');
  await expect.poll(() => steps.getByRole('listitem').first().textContent()).toMatch(/^07:00/);
  await steps.getByRole('heading', { name: 'Tue 1 Dec' }).waitFor();
  expect(await steps.getByRole('heading', { name: /^(?:Wed|Thu|Fri) \d Dec$/ }).count()).toBeGreaterThan(0);
  expect((await savedJob(page)).plan).toEqual({ start: '2026-12-01T07:00', shiftEnd: '15:30' });
  const calendar = await downloadOf(page, () => press(page, 'Save calendar'));
  expect(calendar).toMatch(/^BEGIN:VCALENDAR/);
  expect(calendar).toContain('DTSTART:20261201T070000');

  await setTime(page, 'Shift ends', '06:00');
  const box = page.locator('.field').filter({ has: page.getByLabel('Shift ends', { exact: true }) });
  await box.getByRole('alert').getByText('later than the start of the shift').waitFor();
  await setTime(page, 'Shift ends', '');
  await setTime(page, 'Start of the work', '');
  await expect.poll(() => steps.getByRole('listitem').first().textContent()).toMatch(/^\+0:00/);
  expect((await savedJob(page)).plan).toBeUndefined();
});

test('breaks come and go, an emptied field takes the usual, and each is one step back', async () => {
  const { page } = await openApp();
  await figures(page);
  await goTo(page, 'Plan');
  await press(page, 'Add a break');
  await setTime(page, 'Break 1 at', '09:30');
  await type(page, 'Break 1 lasts', '15');
  await type(page, 'You brush', '250');
  expect((await savedJob(page)).plan).toEqual({ breaks: [{ at: '09:30', minutes: 15 }], coatRate: 250 });
  await type(page, 'You brush', '');
  expect(await page.getByRole('textbox', { name: 'You brush' }).inputValue()).toBe('400');
  await press(page, 'Remove break 1');
  expect((await savedJob(page)).plan).toBeUndefined();
  await press(page, 'Undo: remove a break');
  expect((await savedJob(page)).plan).toEqual({ breaks: [{ at: '09:30', minutes: 15 }] });
});

test('the picture of the day is walked by keys, says each step, and marks its mix on the part', async () => {
  const { page } = await openApp(DEVICES.phone);
  await figures(page);
  await goTo(page, 'Plan');
  const picture = page.getByRole('region', { name: /^Picture of the day/ });
  await picture.focus();
  const said = page.locator('.time-line-shown');
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => said.textContent()).toMatch(/^\+0:00 Wash, plate: 20 min, hands/);
  await expect
    .poll(async () => {
      await page.keyboard.press('ArrowRight');
      return said.textContent();
    })
    .toMatch(/Mix and fill 1/);
  await page
    .getByText(/^Mix 1: A/)
    .first()
    .waitFor();
  await page.keyboard.press('End');
  await expect.poll(() => said.textContent()).toMatch(/Test run/);
  const isSlid = () => picture.evaluate((box) => box.scrollLeft > 0 && box.scrollWidth > box.clientWidth);
  expect(await isSlid()).toBe(true);
});

test('axe finds nothing with the day set and everything unfolded, light and dark', async () => {
  for (const colorScheme of ['light', 'dark'] as const) {
    const { page } = await openApp({ ...DEVICES.desktop, colorScheme, reducedMotion: 'reduce' });
    await figures(page);
    await goTo(page, 'Plan');
    await setTime(page, 'Start of the work', '2026-12-01T07:00');
    await type(page, 'Humidity', '95');
    await press(page, 'Add a break');
    await press(page, 'Minutes of each step');
    await page.getByRole('region', { name: 'Weather' }).getByText('Wait', { exact: true }).waitFor();
    expect(await axeFindings(page), colorScheme).toEqual([]);
  }
});
