import { expect, test } from 'vitest';
import { figures, savedJob, savedText, startOwn } from './app.ts';
import { DEVICES, dragFinger, dragTwoFingers, openApp } from './page.ts';
import { expectMarks, type PictureName, ring, takeTool } from './pictures.ts';

for (const picture of ['3D', 'Flat'] as const satisfies readonly PictureName[]) {
  test(`${picture}: one finger paints, two never do`, async () => {
    const { page } = await openApp(DEVICES.tablet);
    await startOwn(page);
    await takeTool(page, 'Brush', picture);
    await dragFinger(page, await ring(page, picture, 0.7, { turns: 0.3 }));
    await expectMarks(page, 1);
    const painted = await figures(page);
    expect(painted['Deepest wear']).not.toBe('0 mm');
    const [{ wear }] = (await savedJob(page)).parts;
    expect(wear).toMatchObject([{ kind: 'stroke', face: 'face' }]);

    const text = await savedText(page);
    const [right, left] = await ring(page, picture, 0.7, { turns: 0.5, steps: 1 });
    const [rightOut, leftOut] = await ring(page, picture, 0.9, { from: 0.05, turns: 0.5, steps: 1 });
    // The second finger lands within the moment a first one waits, and when the first has begun to paint.
    for (const apart of [20, 400]) {
      await dragTwoFingers(page, [right, left], [rightOut, leftOut], { apart });
      await expectMarks(page, 1);
      expect(await savedText(page), `${apart} ms apart`).toBe(text);
    }
    expect(await figures(page)).toEqual(painted);

    // And one finger paints again.
    await takeTool(page, 'Brush', picture);
    await dragFinger(page, await ring(page, picture, 0.7, { from: 0.5, turns: 0.3 }));
    await expectMarks(page, 2);
  });
}
