import { expect, it } from 'vitest';
import { decodeText } from '../../../../../web/panels/wear/readings/decode-text.ts';

const TEXT = 'angle (°)\t2,5\n';
const utf8 = new TextEncoder().encode(TEXT);
const sixteen = (isLittle: boolean) => {
  const bytes = new Uint8Array(2 + 2 * TEXT.length);
  const view = new DataView(bytes.buffer);
  for (const [i, unit] of [0xfeff, ...Array.from(TEXT, (letter) => letter.charCodeAt(0))].entries())
    view.setUint16(2 * i, unit, isLittle);
  return bytes;
};

it.each<[string, Uint8Array]>([
  ['UTF-8', utf8],
  ['UTF-16, little end first', sixteen(true)],
  ['UTF-16, big end first', sixteen(false)],
  // All its letters stand at their own numbers in the code page, the degree sign at 0xb0 (Windows-1252, IANA).
  ['Windows-1252', Uint8Array.from(TEXT, (letter) => letter.charCodeAt(0))],
])('a degree sign survives %s', (_, bytes) => {
  expect(decodeText(bytes).replace('\uFEFF', '')).toBe(TEXT);
});
