import { describe, expect, it } from 'vitest';
import { DEPTH_RAMP, depthColour } from '../../../geometry/sheet/depth-colour.ts';

type Colour = readonly [number, number, number];

const entries: Colour[] = Array.from({ length: 256 }, (_, i) => [
  DEPTH_RAMP[3 * i],
  DEPTH_RAMP[3 * i + 1],
  DEPTH_RAMP[3 * i + 2],
]);

/** sRGB 0..255 to linear light, IEC 61966-2-1. */
const linear = (colour: Colour): Colour => {
  const decode = (c: number) => (c / 255 <= 0.04045 ? c / 255 / 12.92 : ((c / 255 + 0.055) / 1.055) ** 2.4);
  return [decode(colour[0]), decode(colour[1]), decode(colour[2])];
};

/** Relative luminance, ITU-R BT.709 weights. */
const luminance = (colour: Colour): number => {
  const [r, g, b] = linear(colour);
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};

/** CIELAB under D65 (CIE 15), an even space of its own: the ramp is built in another. */
function lab(light: Colour): Colour {
  const [r, g, b] = light;
  const curve = (t: number) => (t > 216 / 24389 ? Math.cbrt(t) : ((24389 / 27) * t + 16) / 116);
  const x = curve((0.4124564 * r + 0.3575761 * g + 0.1804375 * b) / 0.95047);
  const y = curve(0.2126729 * r + 0.7151522 * g + 0.072175 * b);
  const z = curve((0.0193339 * r + 0.119192 * g + 0.9503041 * b) / 1.08883);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

const distance = (a: Colour, b: Colour) => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

/** Machado, Oliveira and Fernandes, IEEE Trans. Vis. Comput. Graph. 15(6), 2009, severity 1, on linear light. From memory. */
const SIGHT: Record<string, readonly Colour[]> = {
  full: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  protan: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deutan: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritan: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

function seen(colour: Colour, sight: readonly Colour[]): Colour {
  const light = linear(colour);
  const channel = (row: Colour) =>
    Math.min(1, Math.max(0, row[0] * light[0] + row[1] * light[1] + row[2] * light[2]));
  return [channel(sight[0]), channel(sight[1]), channel(sight[2])];
}

describe('the colours of depth', () => {
  it('grow darker in every one of the 255 steps', () => {
    for (let i = 1; i < entries.length; i++) {
      expect(luminance(entries[i]), `step ${i}`).toBeLessThan(luminance(entries[i - 1]));
    }
  });

  it('look evenly spaced: no sixteenth of the ramp is twice as wide as another', () => {
    const steps = Array.from({ length: 16 }, (_, i) =>
      distance(lab(linear(entries[i * 16])), lab(linear(entries[Math.min(255, (i + 1) * 16)]))),
    );
    expect(Math.max(...steps) / Math.min(...steps)).toBeLessThan(2);
  });

  it.each(Object.keys(SIGHT))(
    'stay apart for %s sight: ten bands, each at least 5 from the next',
    (sight) => {
      // A CIELAB difference of 2.3 is just noticeable (Mahy, Van Eycken, Oosterlinck, 1994, from memory); 5 is twice that.
      const bands = Array.from({ length: 10 }, (_, i) =>
        lab(seen(entries[Math.round((i + 0.5) * 25.5)], SIGHT[sight])),
      );
      for (let i = 1; i < bands.length; i++) expect(distance(bands[i], bands[i - 1])).toBeGreaterThan(5);
      // No band comes round to look like a far one.
      for (let i = 2; i < bands.length; i++) {
        for (let j = 0; j < i - 1; j++) expect(distance(bands[i], bands[j])).toBeGreaterThan(10);
      }
    },
  );

  it('keep away from the orange of the controls and the red of danger', () => {
    for (const colour of entries) {
      const [, a, b] = lab(linear(colour));
      const hue = ((Math.atan2(b, a) * 180) / Math.PI + 360) % 360;
      const isWarm = hue < 75 || hue > 330;
      expect(isWarm && Math.hypot(a, b) > 12).toBe(false);
    }
  });

  it('run from the first to the last entry and hold at both ends', () => {
    expect(depthColour(0)).toBe(depthColour(-1));
    expect(depthColour(1)).toBe(depthColour(7));
    const hex = (c: Colour) => `#${c.map((v) => v.toString(16).padStart(2, '0')).join('')}`;
    expect(depthColour(0)).toBe(hex(entries[0]));
    expect(depthColour(1)).toBe(hex(entries[255]));
  });
});
