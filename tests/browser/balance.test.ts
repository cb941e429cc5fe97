import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { commandResult, expectShown, figures, goTo, openFile, press, savedText } from './app.ts';
import { openApp } from './page.ts';

const sample = readFileSync(join(import.meta.dirname, '../../samples/eaten-impeller.job.json'), 'utf8');

test('a rotor over its limit is brought inside by a correction, and the command says the same', async () => {
  const { page, faults } = await openApp();
  await openFile(page, 'eaten.job.json', sample);
  await goTo(page, 'Balance');
  const section = page.getByRole('region', { name: 'Verdict' });
  await section.getByText('Over the limit').waitFor();
  const before = await commandResult(sample);
  expect(before.balance?.verdict).toBe('over');
  expectShown((await figures(page)).Unbalance, [before.balance?.net.amount ?? Number.NaN]);

  await press(
    page.getByRole('region', { name: 'Ways to bring it inside' }).getByRole('listitem').first(),
    'Take this',
  );
  await section.getByText('Within the limit').waitFor();
  const text = await savedText(page);
  const after = await commandResult(text);
  expect(after.balance?.verdict).toBe('within');
  expect(after.balance?.correction.taken.length).toBeGreaterThan(0);
  expectShown((await figures(page)).Unbalance, [after.balance?.net.amount ?? Number.NaN]);
  // Nothing that is taken off for balance is wear: the putty stays what it was.
  expect(after.filler.volume).toBe(before.filler.volume);

  await press(page, /^Undo: take/);
  await section.getByText('Over the limit').waitFor();
  expect(faults).toEqual([]);
});

test('a plate alone has nothing that turns', async () => {
  const { page } = await openApp();
  await goTo(page, 'Balance');
  await page.getByText('Nothing here turns').waitFor();
});
