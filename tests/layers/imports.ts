export interface Import {
  /** As written: `./face.ts`, `zod`, `node:fs`. */
  readonly from: string;
  /** Gone when the file runs: `import type`, `export type`. */
  readonly isType: boolean;
}

/** `import … from '…'` and `export … from '…'`, also over several lines; the words before `from` hold no quote and no semicolon. */
const FROM = /\b(?:import|export)\s+(type\s)?\s*[\w\s{},*$]*?\bfrom\s*(['"])(.+?)\2/g;
const BARE = /\bimport\s*(['"])(.+?)\1/g;
/** `import('…')`, `import.meta.glob('…')`, and the address of a worker or a file: `new URL('…', import.meta.url)`. */
const CALLED = /\b(?:import\s*|import\.meta\.glob(?:<[^(]*>)?|require)\(\s*(['"`])(.+?)\1/g;
const ADDRESS = /\bnew\s+URL\(\s*(['"`])(.+?)\1\s*,\s*import\.meta\.url/g;

/** Everything a module's text asks for, in no order. Reads the text alone: nothing is run or resolved. */
export function importsOf(text: string): Import[] {
  const code = withoutComments(text);
  const found: Import[] = [];
  for (const [, type, , from] of code.matchAll(FROM)) found.push({ from, isType: type !== undefined });
  for (const pattern of [BARE, CALLED, ADDRESS]) {
    for (const [, , from] of code.matchAll(pattern)) found.push({ from, isType: false });
  }
  return found;
}

/** The text with its comments blanked; what looks like a comment inside a string stays. */
export function withoutComments(text: string): string {
  return text.replace(
    /'(?:\\.|[^'\\\n])*'|"(?:\\.|[^"\\\n])*"|`(?:\\.|[^`\\])*`|\/\/[^\n]*|\/\*[\s\S]*?\*\//g,
    (token) => (token.startsWith('/') ? ' ' : token),
  );
}
