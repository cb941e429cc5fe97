/**
 * The schema library, in its form of functions, of which a page loads only those it uses. Code generation is off: a strict content
 * policy forbids building functions from text, so this must come before any schema.
 */
import * as z from 'zod/mini';

z.config({ jitless: true });

export { z };
