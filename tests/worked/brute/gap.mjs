/**
 * The running clearance of a job by brute force: both running faces sampled on grids of their own, ring by ring. gap = as new + shim + what
 * stands open of plate and tips (no less of a tip than it is dressed by) - the films. mm.
 */
import { coatOfJob } from './figures.mjs';
import { openingSlope, plateResidual, ringOf, STATES, tipResiduals } from './residuals.mjs';

/** Width of a ring of the mean, mm. */
const RING = 1;

/** null where the job asks for no gap or names no such parts; `overlap` null where the two faces share no radius. */
export function gapOf(job, { plateStep = 0.5, tipStep = 0.15 } = {}) {
  const asked = job.clearance;
  const plate = job.parts.find((part) => part.id === asked?.plate && part.kind === 'wear-plate');
  const impeller = job.parts.find((part) => part.id === asked?.impeller && part.kind === 'impeller');
  if (plate === undefined || impeller === undefined) return null;
  const running = plateResidual(plate, job, plateStep);
  const { tips, span, vane } = tipResiduals(impeller, job, tipStep);
  const [from, to] = [Math.max(running.span[0], span[0]), Math.min(running.span[1], span[1])];
  if (!(to > from)) return { overlap: null };
  const film = filmOf(job);
  const lies = {
    asked,
    running,
    tips,
    films: { plate: running.coated ? film : 0, tips: tips.map(({ coated }) => (coated ? film : 0)) },
    opening: openingFrom(plate, impeller, asked, from, to),
  };
  const whole = wholeGap(lies, from, to);
  return {
    overlap: { from, to },
    opening: lies.opening,
    films: lies.films,
    ...whole,
    byVane: tips.map((_, i) => wholeGap(alone(lies, i), from, to)),
    at: (low, high) => ringGap(lies, low, high),
    ends: (width) => endsOver(lies, from, to, width),
    running,
    tips,
    vane,
    ...judged(whole.coated, asked),
  };
}

function filmOf(job) {
  const { coats, dryFilm } = coatOfJob(job);
  return (coats * dryFilm) / 1000;
}

const alone = (lies, i) => ({
  ...lies,
  tips: [lies.tips[i]],
  films: { ...lies.films, tips: [lies.films.tips[i]] },
});

/** How far a radius opens the gap beyond the closest place, mm: only where the gap as new holds at the closest alone. */
function openingFrom(plate, impeller, { asNewHolds }, from, to) {
  const slope = openingSlope(plate, impeller);
  const of = (r) => slope * (r - (slope > 0 ? from : to));
  return {
    of,
    slope: Math.abs(slope),
    counts: asNewHolds === 'at the closest',
    most: Math.max(of(from), of(to)),
  };
}

/** Both faces in one ring, null where either has no area there. */
function ringGap({ asked, running, tips, films, opening }, low, high) {
  const base = asked.asNew + (asked.shim ?? 0) + (opening.counts ? opening.of((low + high) / 2) : 0);
  const states = STATES.map((_, state) => {
    const plate = ringOf([running], state, low, high);
    const ring = tips.map((tip) => ringOf([tip], state, low, high));
    const all = ringOf(tips, state, low, high);
    if (plate === null || all === null) return null;
    return { plate, ring, all };
  });
  if (states[0] === null) return null;
  const [{ plate, all }, filled] = states;
  const sum = (a, b, more) => ({
    least: base + a.least + b.least + more,
    mean: base + a.mean + b.mean + more,
    most: base + a.most + b.most + more,
  });
  const there = filled.ring.flatMap((one, i) => (one === null ? [] : [{ ...one, film: films.tips[i] }]));
  const coated = {
    least: Math.min(...there.map((one) => one.least - one.film)),
    mean: filled.all.mean - there.reduce((t, one) => t + one.film, 0) / there.length,
    most: Math.max(...there.map((one) => one.most - one.film)),
  };
  return {
    asFound: sum(plate, all, 0),
    filled: sum(filled.plate, filled.all, 0),
    coated: sum(filled.plate, coated, -films.plate),
  };
}

function wholeGap(lies, from, to) {
  const count = Math.max(1, Math.round((to - from) / RING));
  const wide = (to - from) / count;
  const rings = Array.from({ length: count }, (_, i) =>
    ringGap(lies, from + i * wide, from + (i + 1) * wide),
  ).filter((one) => one !== null);
  const over = (state) => ({
    least: Math.min(...rings.map((one) => one[state].least)),
    mean: rings.reduce((sum, one) => sum + one[state].mean, 0) / rings.length,
    most: Math.max(...rings.map((one) => one[state].most)),
  });
  return { asFound: over('asFound'), filled: over('filled'), coated: over('coated') };
}

/** Least and most by rings of any width that begin everywhere: what does not hang on where a ring ends. The whole first, then each vane. */
function endsOver(lies, from, to, width) {
  const step = Math.min(0.25, width);
  const starts = Array.from({ length: Math.ceil((to - from) / step) }, (_, i) => from + i * step);
  const each = [lies, ...lies.tips.map((_, i) => alone(lies, i))];
  return each.map((one) => {
    const rings = starts
      .map((low) => ringGap(one, low, Math.min(to, low + width)))
      .filter((ring) => ring !== null);
    return Object.fromEntries(
      ['asFound', 'filled', 'coated'].map((state) => [
        state,
        {
          least: Math.min(...rings.map((ring) => ring[state].least)),
          most: Math.max(...rings.map((ring) => ring[state].most)),
        },
      ]),
    );
  });
}

/** Worst case all four add up; likely, they are independent and their squares do. */
function judged(coated, { least, most, ...asked }) {
  const parts = [asked.tolerance, asked.filmTolerance, asked.dressTolerance, asked.runOut].map((t) => t ?? 0);
  const worstCase = parts.reduce((a, b) => a + b, 0);
  const rootSumSquare = Math.hypot(...parts);
  const verdict = (tolerance) => {
    const tight = coated.least - tolerance < least;
    const wide = coated.most + tolerance > most;
    return tight && wide ? 'both' : tight ? 'tight' : wide ? 'wide' : 'fit';
  };
  return {
    tolerance: { worstCase, rootSumSquare },
    verdict: verdict(worstCase),
    likely: verdict(rootSumSquare),
  };
}
