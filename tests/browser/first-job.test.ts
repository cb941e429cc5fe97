import { expect, test } from 'vitest';
import type { JobFile } from '../../geometry/job/job-file.ts';
import {
  commandResult,
  downloadOf,
  expectShown,
  faultBeside,
  figureNow,
  figures,
  goTo,
  openFile,
  press,
  savedJob,
  savedText,
  startOwn,
  type,
} from './app.ts';
import { openApp } from './page.ts';
import { drawAlong, expectMarks, pressAlong, ring, takeTool } from './pictures.ts';

test('a plate typed from the caliper and brushed with the mouse gives putty, and its file the same figures everywhere', async () => {
  const { page } = await openApp();
  await startOwn(page);

  // A comma, a unit of its own, fractions of an inch, a dot: 320 mm, 120 mm, 3/4 in = 19.05 mm.
  await type(page, 'Outer diameter', '320,0');
  await type(page, 'Bore diameter', '12 cm');
  await type(page, 'Thickness', '3/4 in');
  await press(page, 'Add a bolt circle');
  await type(page, 'Holes', '6');
  await type(page, 'Circle diameter', '290.0');
  await type(page, 'Hole diameter', '1/2"');
  for (const label of ['Outer diameter', 'Thickness', 'Circle diameter', 'Hole diameter']) {
    expect(await faultBeside(page, label), label).toBe('');
  }
  const [plate] = (await savedJob(page)).parts;
  expect(plate).toMatchObject({ outerDiameter: 320, boreDiameter: 120, thickness: 19.05 });
  expect(plate).toMatchObject({ boltHoles: [{ count: 6, circleDiameter: 290, holeDiameter: 12.7 }] });
  expect(await figures(page)).toMatchObject({ Putty: '0 mL', 'Thinnest wall': '19.05 mm' });

  await takeTool(page, 'Brush', 'Flat');
  await type(page, 'Depth', '3.5');
  await drawAlong(page, await ring(page, 'Flat', 0.7));
  await expectMarks(page, 1);
  const ringed = await figures(page);
  expect(ringed['Deepest wear']).toBe('3.50 mm');

  await takeTool(page, 'Brush', '3D');
  await type(page, 'Depth', '5');
  await pressAlong(page, await ring(page, '3D', 0.7, { turns: 0.2 }));
  // The figures move with the brush, before it is lifted.
  await expect.poll(() => figureNow(page, 'Putty')).not.toBe(ringed.Putty);
  await page.mouse.up();
  await expectMarks(page, 2);
  const shown = await figures(page);
  expect(shown['Deepest wear']).toBe('5.00 mm');
  expect(Number.parseFloat(shown.Putty)).toBeGreaterThan(Number.parseFloat(ringed.Putty));

  await press(page, 'File');
  const text = await downloadOf(page, () => page.getByRole('menuitem', { name: 'Save to a file' }).click());
  const job = JSON.parse(text) as JobFile;
  expect(job.parts[0].wear.map(({ kind, face }) => `${kind} on ${face}`)).toEqual([
    'stroke on face',
    'stroke on face',
  ]);

  const { filler, coat, parts } = await commandResult(text);
  expectShown(shown.Putty, [filler.volume]);
  expectShown(shown['A : B'], [filler.partA.mass, filler.partB.mass]);
  expectShown(shown.Coat, [coat.volume]);
  expectShown(shown['Deepest wear'], [Math.max(...parts[0].faces.map(({ deepest }) => deepest))]);
  expectShown(shown['Thinnest wall'], [parts[0].thinnest.remaining]);

  const { page: elsewhere } = await openApp();
  await openFile(elsewhere, 'worn.job.json', text);
  await goTo(elsewhere, 'Wear');
  await expectMarks(elsewhere, 2);
  expect(await figures(elsewhere)).toEqual(shown);
  expect(await savedText(elsewhere)).toBe(text);
});
