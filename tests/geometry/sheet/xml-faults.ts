const NAME = '[A-Za-z_:][-\\w:.]*';
const ATTRIBUTES = new RegExp(`^(?:\\s+${NAME}="(?:[^<&"]|&(?:amp|lt|gt|quot|#\\d+);)*")*\\s*$`);

/**
 * What keeps a text from being one well-formed XML element, in words; none when it is. Knows tags, attributes in double quotes, text and
 * the references that are written here; anything else (comments, declarations, other references) is a fault.
 */
export function xmlFaults(text: string): string[] {
  const faults: string[] = [];
  const open: string[] = [];
  let roots = 0;
  for (const [piece] of text.matchAll(/<[^>]*>|[^<]+|</g)) {
    const tag = new RegExp(`^<(/?)(${NAME})([^>]*?)(/?)>$`).exec(piece);
    if (tag === null) {
      if (piece.startsWith('<')) faults.push(`no tag: ${piece.slice(0, 40)}`);
      else if (/&(?!(?:amp|lt|gt|quot|#\d+);)/.test(piece)) faults.push(`bare &: ${piece.slice(0, 40)}`);
      else if (open.length === 0 && piece.trim() !== '') faults.push(`text outside: ${piece.slice(0, 40)}`);
      continue;
    }
    const [, closes, name, attributes, isEmpty] = tag;
    if (closes !== '') {
      if (open.pop() !== name) faults.push(`${name} closes what it did not open`);
      continue;
    }
    if (!ATTRIBUTES.test(attributes)) faults.push(`attributes of ${name}: ${attributes.slice(0, 60)}`);
    const named = [...attributes.matchAll(/([-\w:.]+)="/g)].map(([, attribute]) => attribute);
    if (new Set(named).size < named.length) faults.push(`${name} has an attribute twice: ${named.join(' ')}`);
    if (open.length === 0) roots += 1;
    if (isEmpty === '') open.push(name);
  }
  if (open.length > 0) faults.push(`left open: ${open.join(', ')}`);
  if (roots !== 1) faults.push(`${roots} elements at the top`);
  return faults;
}
