import { expect, test } from 'vitest';
import { typeset } from '../../../geometry/sheet/typeset.ts';

test('units are written as print writes them, and words are left alone', () => {
  expect(typeset('841 cm2, 250 um wet, 2.3 g/cm3')).toBe('841 cm², 250 µm wet, 2.3 g/cm³');
  expect(typeset('angle 20 to 95 deg at 16 degC, 1 x kit')).toBe('angle 20 to 95° at 16 °C, 1 × kit');
  expect(typeset('975 g.mm, uncertain by +- 18 g.mm')).toBe('975 g·mm, uncertain by ± 18 g·mm');
  expect(typeset('-0.20 to -0.15 mm (-4), 2026-12-01, 3 - 4')).toBe(
    '−0.20 to −0.15 mm (−4), 2026-12-01, 3 - 4',
  );
  expect(typeset('degrease the album')).toBe('degrease the album');
});
