import { jobSchema } from './job-file.ts';
import { z } from './zod.ts';

/** The JSON Schema of the job file, as `job.schema.json` publishes it: for editors, and for programs that write jobs. */
export function jobSchemaText(): string {
  const schema = z.toJSONSchema(jobSchema, { io: 'input', target: 'draft-2020-12' });
  return `${JSON.stringify({ title: 'Job file, format 1', ...schema }, null, 2)}\n`;
}
