import type { FlatPoint } from './flat-frame.ts';
import { simplified, svgPath } from './flat-path.ts';
import type { SectionPlace, SectionProfile, SectionRun } from './section.ts';
import type { SectionFrame } from './section-frame.ts';

/** What a section is made of as SVG path data, px. Empty where there is none. */
export interface SectionLayers {
  /** Closed shapes. */
  readonly metal: string;
  readonly putty: string;
  /** What the coat fills of damage that is left to it. */
  readonly left: string;
  readonly film: string;
  /** Lines. */
  readonly worn: string;
  readonly sound: string;
  readonly behind: string;
}

/** A corner nearer than this to a straight line is left out, px. */
const FINE = 0.05;
/** Places nearer to each other than this are drawn as one, px: a long line has many to a pixel. */
const NEAR = 0.25;

export function sectionLayers(profile: SectionProfile, frame: SectionFrame): SectionLayers {
  const { film } = profile;
  const { x, y, bottom, showsWall } = frame;
  const runs = profile.runs.map((run) => thinned(run, frame));
  const lineOf = (places: SectionRun, depth: (place: SectionPlace) => number): readonly FlatPoint[] =>
    simplified(
      places.map((place): FlatPoint => [x(place.at), y(depth(place))]),
      FINE,
    );
  const shape = (
    places: SectionRun,
    upper: (place: SectionPlace) => number,
    lower: (place: SectionPlace) => number,
  ): readonly FlatPoint[] => [...lineOf(places, upper), ...lineOf(places, lower).toReversed()];
  const floor = ({ depth, wall }: SectionPlace): number => Math.max(depth, wall ?? Number.POSITIVE_INFINITY);
  const metal = runs.map((run): readonly FlatPoint[] => {
    if (showsWall && run.every(({ wall }) => wall !== null)) return shape(run, ({ depth }) => depth, floor);
    const [first, last] = [run[0], run[run.length - 1]];
    return [...lineOf(run, ({ depth }) => depth), [x(last.at), bottom], [x(first.at), bottom]];
  });
  const stretches = (test: (place: SectionPlace) => boolean): SectionRun[] =>
    runs.flatMap((run) => pieces(run, test));
  const walled = showsWall ? stretches(({ wall }) => wall !== null) : [];
  return {
    metal: svgPath(metal, true),
    putty: svgPath(
      stretches(({ putty }) => putty > 0).map((run) => shape(run, topOf, ({ depth }) => depth)),
      true,
    ),
    left:
      film > 0
        ? svgPath(
            stretches(({ isLeft }) => isLeft).map((run) =>
              shape(
                run,
                () => 0,
                ({ depth }) => depth,
              ),
            ),
            true,
          )
        : '',
    film:
      film > 0
        ? svgPath(
            runs.map((run) => shape(run, (place) => coatedTop(place) - film, coatedTop)),
            true,
          )
        : '',
    worn: svgPath(
      runs.map((run) => lineOf(run, ({ depth }) => depth)),
      false,
    ),
    sound: svgPath(
      [
        [
          [x(0), y(0)],
          [x(profile.line.length), y(0)],
        ],
      ],
      false,
    ),
    behind: svgPath(
      walled.map((run) => lineOf(run, ({ wall }) => wall ?? 0)),
      false,
    ),
  };
}

/** The places of a run that are seen apart: its ends, where the fill changes, and what lies between them a little way off. */
function thinned(run: SectionRun, { x, y }: SectionFrame): SectionRun {
  const kept = [run[0]];
  for (let i = 1; i < run.length; i++) {
    const [last, place] = [kept[kept.length - 1], run[i]];
    const isChange = place.putty > 0 !== run[i - 1].putty > 0 || place.isLeft !== run[i - 1].isLeft;
    if (isChange && run[i - 1] !== last) kept.push(run[i - 1]);
    const isApart =
      Math.abs(x(place.at) - x(last.at)) >= NEAR || Math.abs(y(place.depth) - y(last.depth)) >= NEAR;
    if (isApart || isChange || i === run.length - 1) kept.push(place);
  }
  return kept;
}

/** Depth of what the coat goes on: putty where there is some, else the worn surface. */
const topOf = ({ depth, putty }: SectionPlace): number => depth - putty;

/** The same where the first coat has filled what is left to it. */
const coatedTop = (place: SectionPlace): number => (place.isLeft ? 0 : topOf(place));

/** The stretches of a run where something holds, each with one place more at either end, so that shapes close onto the worn line. */
function pieces(run: SectionRun, test: (place: SectionPlace) => boolean): SectionRun[] {
  const found: SectionPlace[][] = [];
  let isOpen = true;
  for (const [i, place] of run.entries()) {
    if (test(place)) {
      if (isOpen) found.push(i > 0 ? [run[i - 1]] : []);
      found[found.length - 1].push(place);
    } else if (!isOpen) found[found.length - 1].push(place);
    isOpen = !test(place);
  }
  return found.filter((piece) => piece.length > 1);
}
