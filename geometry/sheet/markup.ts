/** A piece of HTML or SVG that is safe to put into a page: everything that came from a person has been escaped. */
export interface Markup {
  readonly markup: string;
}

type Piece = string | number | null | Markup | readonly Markup[];

/**
 * Template tag: text and numbers are escaped, also inside quoted attributes; other markup goes in as it is, null leaves nothing.
 *
 *     html`<td title="${name}">${name}</td>`
 */
export function html(texts: TemplateStringsArray, ...pieces: readonly Piece[]): Markup {
  return { markup: texts.reduce((page, text, i) => page + written(pieces[i - 1]) + text) };
}

function written(piece: Piece): string {
  if (piece === null) return '';
  if (typeof piece === 'number') return String(piece);
  if (typeof piece === 'string') return escaped(piece);
  if ('markup' in piece) return piece.markup;
  return piece.map(({ markup }) => markup).join('');
}

const REFERENCES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Also drops what no page may hold: control characters other than tab and line breaks. */
function escaped(text: string): string {
  return text.replace(/[^\P{Cc}\t\n\r]/gu, '').replace(/[&<>"']/g, (sign) => REFERENCES[sign]);
}
