import type { Estimate } from '../estimate.ts';
import { type JobSection, jobSections } from './job-sections.ts';
import { html, type Markup } from './markup.ts';
import { MILLIMETRES, sectionSvg } from './section-svg.ts';
import { deepestText, sectionPlaceText, tenths } from './section-words.ts';
import { typeset } from './typeset.ts';

/** Px of the drawing, as wide as the sheet; low enough for three on a page. */
const SIZE = { width: 660, text: 11.5, high: 0.36 } as const;

/** A picture of every section kept in the job for one part, with where it lies and its deepest place. */
export function sheetSections(estimate: Estimate, partIndex: number): Markup[] {
  return jobSections(estimate, partIndex).map((known, i) =>
    picture(known, i + 1, `section-${partIndex + 1}-${i + 1}`),
  );
}

/** One line a section: what the picture says in words. */
export function sectionLines(estimate: Estimate, partIndex: number): string[] {
  return jobSections(estimate, partIndex).map(
    ({ face, section, profile }, i) =>
      `${i + 1}: ${face.name}, ${sectionPlaceText(face, section)}, ${tenths(profile.line.length)} mm long: ${deepestText(face, profile)}`,
  );
}

function picture({ part, face, section, profile }: JobSection, number: number, id: string): Markup {
  const where = sectionPlaceText(face, section);
  const deepest = deepestText(face, profile);
  return html`<figure class="sheet-picture">
<figcaption>${typeset(`Section ${number} of ${part} ${face.name}: ${where}; ${deepest}`)}</figcaption>
${sectionSvg(profile, {
  title: typeset(`Section ${number} of ${part} ${face.name}`),
  description: typeset(`${where}, ${tenths(profile.line.length)} mm long; ${deepest}`),
  id,
  unit: MILLIMETRES,
  ...SIZE,
})}
</figure>`;
}
