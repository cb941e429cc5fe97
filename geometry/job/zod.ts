/** The schema library with code generation off: a strict content policy forbids building functions from text, so this must come before any schema. */
import { z } from 'zod';

z.config({ jitless: true });

export { z };
