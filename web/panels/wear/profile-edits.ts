/** Changes to the profile of an edge: points of a place along it and the loss there, places ascending. Pure. */
import type { Mm } from '../../../geometry/units.ts';

export type ProfilePoint = readonly [along: Mm, loss: Mm];
export type Profile = readonly ProfilePoint[];

/** One point in the place of another; the rest keep their order whatever is typed, so that a fault names the point that is wrong. */
export function withPoint(profile: Profile, at: number, point: ProfilePoint): Profile {
  return profile.map((old, i) => (i === at ? point : old));
}

/** A point drawn elsewhere: it stays between its neighbours, on the edge and at no loss below 0. */
export function withPointDrawn(
  profile: Profile,
  at: number,
  [along, loss]: ProfilePoint,
  [from, to]: readonly [Mm, Mm],
): Profile {
  const least = profile[at - 1]?.[0] ?? from;
  const most = profile[at + 1]?.[0] ?? to;
  const within = Math.min(most, Math.max(least, along));
  return withPoint(profile, at, [tenth(within), Math.max(0, tenth(loss))]);
}

/** A point put in where it belongs. @returns the profile, and where the point now stands */
export function withPointAt(profile: Profile, point: ProfilePoint): { profile: Profile; at: number } {
  const next = profile.findIndex(([along]) => along > point[0]);
  const at = next < 0 ? profile.length : next;
  return { profile: [...profile.slice(0, at), point, ...profile.slice(at)], at };
}

/** A point in the middle of the longest piece; past the end of a profile of one. */
export function withPointAdded(profile: Profile, [, to]: readonly [Mm, Mm]): Profile {
  const last = profile[profile.length - 1];
  if (profile.length === 1) return [...profile, [Math.max(last[0], tenth(to)), last[1]]];
  let widest = 1;
  for (let i = 2; i < profile.length; i++) {
    if (profile[i][0] - profile[i - 1][0] > profile[widest][0] - profile[widest - 1][0]) widest = i;
  }
  const [[a, before], [b, after]] = [profile[widest - 1], profile[widest]];
  const middle: ProfilePoint = [tenth((a + b) / 2), tenth((before + after) / 2)];
  return [...profile.slice(0, widest), middle, ...profile.slice(widest)];
}

export function withoutPoint(profile: Profile, at: number): Profile {
  return profile.length < 2 ? profile : profile.filter((_, i) => i !== at);
}

/** To the tenth of a millimetre, as fine as a finger draws. */
const tenth = (size: Mm): Mm => Math.round(size * 10) / 10;
