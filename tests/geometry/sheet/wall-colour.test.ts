import { describe, expect, it } from 'vitest';
import { depthColour } from '../../../geometry/sheet/depth-colour.ts';
import { wallColour } from '../../../geometry/sheet/wall-colour.ts';

type Colour = readonly [number, number, number];

const channels = (hex: string): Colour => {
  const value = Number.parseInt(hex.slice(1), 16);
  return [value >> 16, (value >> 8) & 255, value & 255];
};

/** sRGB 0..255 to linear light, IEC 61966-2-1. */
const linear = (colour: Colour): Colour => {
  const decode = (c: number) => (c / 255 <= 0.04045 ? c / 255 / 12.92 : ((c / 255 + 0.055) / 1.055) ** 2.4);
  return [decode(colour[0]), decode(colour[1]), decode(colour[2])];
};

/** CIELAB under D65 (CIE 15): the ramp is built in another space. */
function lab([r, g, b]: Colour): Colour {
  const curve = (t: number) => (t > 216 / 24389 ? Math.cbrt(t) : ((24389 / 27) * t + 16) / 116);
  const x = curve((0.4124564 * r + 0.3575761 * g + 0.1804375 * b) / 0.95047);
  const y = curve(0.2126729 * r + 0.7151522 * g + 0.072175 * b);
  const z = curve((0.0193339 * r + 0.119192 * g + 0.9503041 * b) / 1.08883);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

const distance = (a: Colour, b: Colour) => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
const seenLab = (hex: string): Colour => lab(linear(channels(hex)));

describe('the colours of what is left of a wall', () => {
  it('grow darker the thinner it is, in every step of a hundred', () => {
    const light = Array.from({ length: 101 }, (_, i) => seenLab(wallColour(1 - i / 100))[0]);
    for (let i = 1; i < light.length; i++) expect(light[i], `step ${i}`).toBeLessThan(light[i - 1]);
  });

  it('ten bands stay apart by lightness alone, so that no eye for hues is needed', () => {
    // A difference of 2.3 is just noticeable (Mahy, Van Eycken, Oosterlinck, 1994, from memory).
    for (let i = 1; i < 10; i++) {
      const [a, b] = [seenLab(wallColour((i - 0.5) / 10)), seenLab(wallColour((i + 0.5) / 10))];
      expect(b[0] - a[0]).toBeGreaterThan(4);
    }
  });

  it('are not to be taken for those of depth', () => {
    for (let i = 0; i <= 20; i++) {
      for (let j = 0; j <= 20; j++) {
        // The palest ends are nearly white in both.
        if (i < 3 && j < 3) continue;
        const [wall, depth] = [wallColour(1 - i / 20), depthColour(j / 20)];
        expect(distance(seenLab(wall), seenLab(depth)), `${wall} ${depth}`).toBeGreaterThan(9);
      }
    }
  });

  it('keep away from the orange of the controls and the red of danger', () => {
    for (let i = 0; i <= 100; i++) {
      const [, a, b] = seenLab(wallColour(i / 100));
      const hue = ((Math.atan2(b, a) * 180) / Math.PI + 360) % 360;
      expect((hue < 75 || hue > 335) && Math.hypot(a, b) > 12).toBe(false);
    }
  });

  it('hold at both ends', () => {
    expect(wallColour(-1)).toBe(wallColour(0));
    expect(wallColour(2)).toBe(wallColour(1));
  });
});
