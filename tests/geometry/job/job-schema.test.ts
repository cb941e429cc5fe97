import { expect, test } from 'vitest';
import { jobSchemaText } from '../../../geometry/job/job-schema.ts';

test('the published schema is the one the code reads by; `vitest -u` on this file publishes it anew', async () => {
  await expect(jobSchemaText()).toMatchFileSnapshot('../../../geometry/job/job.schema.json');
});

test('it says the unit of every number, and lets fields it does not know pass', () => {
  const schema = JSON.parse(jobSchemaText()) as {
    $defs: Record<
      string,
      { properties: Record<string, { description?: string }>; additionalProperties: unknown }
    >;
  };
  const { WearPlate } = schema.$defs;
  expect(WearPlate.additionalProperties).toEqual({});
  expect(WearPlate.properties.thickness).toMatchObject({
    type: 'number',
    exclusiveMinimum: 0,
    maximum: 10_000,
  });
  expect(WearPlate.properties.thickness.description).toBe('mm');
});
