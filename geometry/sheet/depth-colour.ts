/**
 * The colours of depth, used for nothing else: pale straw where hardly anything is missing, through sea green and teal to deep indigo.
 * Lightness falls evenly, so equal steps of depth look equal, the order survives a grey print, and nobody needs to tell hues apart.
 * Built in OKLab (B. Ottosson, "A perceptual color space for image processing", 2020). Source: tests/geometry/sheet/depth-colour.test.ts
 */
import { type Fraction, toRadians } from '../units.ts';

const ENTRIES = 256;

/** Lightness (0 black, 1 white), chroma and hue (deg) of the ramp, lightest first. Chroma stays inside what a screen can show. */
const STOPS: readonly RampStop[] = [
  { lightness: 0.955, chroma: 0.03, hue: 95 },
  { lightness: 0.8, chroma: 0.07, hue: 150 },
  { lightness: 0.64, chroma: 0.085, hue: 190 },
  { lightness: 0.46, chroma: 0.085, hue: 235 },
  { lightness: 0.25, chroma: 0.11, hue: 285 },
];

/** 256 colours, shallow to deep: sRGB red, green, blue, 0..255. */
export const DEPTH_RAMP: Uint8Array = rampOf(STOPS);

/**
 * Colour of a depth as `#rrggbb`.
 * @param share  depth as a share of the deepest on the scale; clamped to 0..1
 */
export function depthColour(share: Fraction): string {
  return colourOf(DEPTH_RAMP, share);
}

/** Colour at a share of a ramp as `#rrggbb`; clamped to 0..1. */
export function colourOf(ramp: Uint8Array, share: Fraction): string {
  const entry = Math.round(Math.min(1, Math.max(0, share)) * (ENTRIES - 1));
  const channels = ramp.subarray(entry * 3, entry * 3 + 3);
  return `#${Array.from(channels, (channel) => channel.toString(16).padStart(2, '0')).join('')}`;
}

/** Lightness (0 black, 1 white), chroma and hue (deg) at one place of a ramp. */
export interface RampStop {
  readonly lightness: number;
  readonly chroma: number;
  readonly hue: number;
}

/** 256 colours whose lightness falls evenly from the first stop to the last. */
export function rampOf(stops: readonly RampStop[]): Uint8Array {
  const ramp = new Uint8Array(ENTRIES * 3);
  for (let entry = 0; entry < ENTRIES; entry++)
    ramp.set(toScreen(colourAt(stops, entry / (ENTRIES - 1))), entry * 3);
  return ramp;
}

/** Lightness runs evenly from end to end; chroma and hue follow it from stop to stop. */
function colourAt(
  stops: readonly RampStop[],
  share: Fraction,
): readonly [lightness: number, a: number, b: number] {
  const first = stops[0];
  const last = stops[stops.length - 1];
  const lightness = first.lightness + share * (last.lightness - first.lightness);
  const next = Math.max(
    1,
    stops.findIndex((stop) => stop.lightness <= lightness + 1e-12),
  );
  const [from, to] = [stops[next - 1], stops[next]];
  const part = (from.lightness - lightness) / (from.lightness - to.lightness);
  const chroma = from.chroma + part * (to.chroma - from.chroma);
  const hue = toRadians(from.hue + part * (to.hue - from.hue));
  return [lightness, chroma * Math.cos(hue), chroma * Math.sin(hue)];
}

/** OKLab to sRGB, 0..255. */
function toScreen([lightness, a, b]: readonly [number, number, number]): number[] {
  const long = (lightness + 0.3963377774 * a + 0.2158037573 * b) ** 3;
  const medium = (lightness - 0.1055613458 * a - 0.0638541728 * b) ** 3;
  const short = (lightness - 0.0894841775 * a - 1.291485548 * b) ** 3;
  const linear = [
    4.0767416621 * long - 3.3077115913 * medium + 0.2309699292 * short,
    -1.2684380046 * long + 2.6097574011 * medium - 0.3413193965 * short,
    -0.0041960863 * long - 0.7034186147 * medium + 1.707614701 * short,
  ];
  return linear.map((light) => Math.round(255 * encoded(Math.min(1, Math.max(0, light)))));
}

/** The sRGB transfer curve, IEC 61966-2-1. */
function encoded(light: Fraction): Fraction {
  return light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055;
}
