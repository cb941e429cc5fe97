import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import {
  commandResult,
  faultBeside,
  figures,
  goTo,
  openFile,
  press,
  savedJob,
  savedText,
  startOwn,
  type,
} from './app.ts';
import { axeFindings, openApp } from './page.ts';

const sample = readFileSync(join(import.meta.dirname, '../../samples/facing-pair.job.json'), 'utf8');

test('two coats that close the gap are told, the smallest change makes it fit, and the command says the same', async () => {
  const { page } = await openApp();
  await openFile(page, 'pair.job.json', sample);
  await goTo(page, 'Clearance');
  const verdict = page.getByRole('region', { name: 'Verdict' });
  await verdict.getByText('Too tight').waitFor();
  const before = (await commandResult(sample)).clearance;
  expect(before?.verdict).toBe('tight');
  expect((await figures(page))['Least clearance']).toBe(
    `${before?.coated.least.toFixed(2).replace('-', '−')} mm`,
  );
  expect(await axeFindings(page)).toEqual([]);

  const ways = page.getByRole('region', { name: 'Ways to bring it in' });
  await press(ways, 'Take this fit');
  await verdict.getByText('It runs free').waitFor();
  const after = (await commandResult(await savedText(page))).clearance;
  expect(after?.verdict).toBe('fit');
  expect((await figures(page))['Least clearance']).toBe(`${after?.coated.least.toFixed(2)} mm`);
  await ways.getByText('It fits as it is').waitFor();

  await press(page, 'Undo: find me a fit');
  await verdict.getByText('Too tight').waitFor();
  expect((await savedJob(page)).clearance?.shim).toBeUndefined();
});

test('a gap that cannot be is refused beside its field; inches come back as mm; the map follows the state', async () => {
  const { page } = await openApp();
  await openFile(page, 'pair.job.json', sample);
  await goTo(page, 'Clearance');
  await page.getByRole('region', { name: 'Verdict' }).getByText('Too tight').waitFor();
  await type(page, 'Narrowest allowed', '2');
  expect(await faultBeside(page, 'Narrowest allowed')).toContain('at most 1.6');
  expect((await savedJob(page)).clearance?.least).toBe(0.4);
  await type(page, 'Narrowest allowed', '1/64 in');
  await expect.poll(async () => (await savedJob(page)).clearance?.least).toBeCloseTo(25.4 / 64, 9);

  const map = page.getByRole('region', { name: 'Round the plate' });
  await map.getByRole('img', { name: /^Map of the gap, coated: the parts meet/ }).waitFor();
  await map.getByRole('radio', { name: 'As found' }).click();
  await map.getByRole('img', { name: /^Map of the gap, as found: within the band/ }).waitFor();
  // The picture beside it shows the same state.
  const drawn = page.getByRole('radiogroup', { name: 'Gap drawn' });
  await drawn.getByRole('radio', { name: 'As found', checked: true }).waitFor();
});

test('a plate alone has no gap; with an impeller beside it one press asks for it', async () => {
  const { page } = await openApp();
  await startOwn(page);
  await goTo(page, 'Clearance');
  await page.getByText('Nothing runs against it').waitFor();
  await goTo(page, 'Part');
  await press(page, 'Add an impeller');
  await goTo(page, 'Clearance');
  await press(page, 'Work out the clearance');
  await page.getByRole('region', { name: 'Verdict' }).getByText('Too tight').waitFor();
  // 0.4 mm as new less two coats of 0.25 mm on both faces (job format, "Clearance").
  expect((await figures(page))['Least clearance']).toBe('−0.60 mm');
});
