import { expect, test } from 'vitest';
import { faultBeside, field, figures, goTo, savedText, startOwn, type } from './app.ts';
import { openApp } from './page.ts';

/** What a hand in a glove types into the outer diameter, and what must be said of it. */
const NONSENSE: readonly { text: string; says: RegExp }[] = [
  { text: 'thick', says: /"thick" is not a number/ },
  { text: '-5', says: /-5.*(more than 0|greater than 0|positive|above 0)/i },
  { text: '1.234,5', says: /"1\.234,5" has more than one mark/ },
  { text: '', says: /This is empty\. Type a number/ },
  { text: '300 kg', says: /"300 kg" has a unit that does not fit here/ },
  // Refused by the job, not by the field: the bore is 120.
  { text: '100', says: /boreDiameter|outerDiameter/ },
];

test('nonsense in a field is refused beside it in words, and nothing is lost', async () => {
  const { page } = await openApp();
  await startOwn(page);
  const before = await savedText(page);
  const shown = await figures(page);
  for (const { text, says } of NONSENSE) {
    await type(page, 'Outer diameter', text);
    expect(await faultBeside(page, 'Outer diameter'), text).toMatch(says);
    expect(await field(page, 'Outer diameter').inputValue()).toBe(text);
    expect(await field(page, 'Outer diameter').getAttribute('aria-invalid')).toBe('true');
    expect(await savedText(page), text).toBe(before);
  }
  expect(await figures(page)).toEqual(shown);

  // The text waits where it was typed, and its step says so.
  await goTo(page, 'Fill');
  expect(await page.locator('#step-part').textContent()).toBe('1 fault');
  await goTo(page, 'Part');
  expect(await field(page, 'Outer diameter').inputValue()).toBe('100');
  await field(page, 'Outer diameter').press('Escape');
  expect(await field(page, 'Outer diameter').inputValue()).toBe('300');
  expect(await faultBeside(page, 'Outer diameter')).toBe('');
  expect(await page.locator('#step-part').textContent()).toBe('1 part');
});

test('text is taken when the field is left, and arrow keys step it', async () => {
  const { page } = await openApp();
  await startOwn(page);
  await field(page, 'Thickness').fill('7/8 in');
  await field(page, 'Bore diameter').focus();
  expect(await field(page, 'Thickness').inputValue()).toBe('22.225');
  await field(page, 'Thickness').press('ArrowUp');
  expect(await field(page, 'Thickness').inputValue()).toBe('23.225');
  expect(JSON.parse(await savedText(page)).parts[0].thickness).toBe(23.225);
});
