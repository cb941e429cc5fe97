import { USUAL_SCALE_STEP } from '../../../geometry/job/defaults.ts';
import type { CoatFile, FillerFile } from '../../../geometry/job/job-file.ts';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { SwitchField } from '../../fields/SwitchField.tsx';
import { SheetFold } from './SheetFold.tsx';
import type { MaterialEdit } from './use-material-edit.ts';

interface ScaleFieldsProps<Material extends FillerFile | CoatFile> {
  readonly path: string;
  readonly word: string;
  readonly material: Material;
  readonly edit: MaterialEdit<Material>;
}

/** What a data sheet that gives no range commonly means, degC (common practice). */
const START = { from: 10, to: 35 } as const;

/** What the parts are weighed on, and how warm the part may be. */
export function ScaleFields<Material extends FillerFile | CoatFile>({
  path,
  word,
  material,
  edit,
}: ScaleFieldsProps<Material>) {
  const { surfaceRange } = material;
  const setRange = (range: typeof surfaceRange, field: string) =>
    edit(
      `warmth for the ${word}`,
      ({ surfaceRange: _, ...old }) =>
        (range === undefined ? old : { ...old, surfaceRange: range }) as Material,
      `surfaceRange${field}`,
    );
  return (
    <SheetFold heading="Scale, and warmth of the part">
      <QuantityField
        label="The scale shows steps of"
        quantity="mass"
        path={`${path}.scaleStep`}
        value={material.scaleStep ?? USUAL_SCALE_STEP}
        step={0.1}
        help="A kitchen scale: 1 g. A pocket scale: 0.1 g."
        onCommit={(scaleStep) => edit('step of the scale', (old) => ({ ...old, scaleStep }), 'scaleStep')}
      />
      <SwitchField
        label="The data sheet says how warm the part may be"
        value={surfaceRange !== undefined}
        onCommit={(isKnown) => setRange(isKnown ? START : undefined, '')}
      />
      {surfaceRange !== undefined && (
        <>
          <QuantityField
            label="Part no colder than"
            quantity="temperature"
            path={`${path}.surfaceRange.from`}
            value={surfaceRange.from}
            onCommit={(from) => setRange({ ...surfaceRange, from }, '.from')}
          />
          <QuantityField
            label="Part no warmer than"
            quantity="temperature"
            path={`${path}.surfaceRange.to`}
            value={surfaceRange.to}
            onCommit={(to) => setRange({ ...surfaceRange, to }, '.to')}
          />
        </>
      )}
    </SheetFold>
  );
}
