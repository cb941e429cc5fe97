import { GENERIC_FILLER } from '../../../geometry/job/defaults.ts';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { useJob } from '../../job/job-store.ts';
import { useEstimate } from '../../worker/estimate-client.ts';
import { OptionalQuantity } from '../OptionalQuantity.tsx';
import { CureFields } from './CureFields.tsx';
import { DataSheet } from './DataSheet.tsx';
import { isGeneric } from './generic.ts';
import { MixFields } from './MixFields.tsx';
import { Packs } from './Packs.tsx';
import { ScaleFields } from './ScaleFields.tsx';
import { TimeSpan } from './TimeSpan.tsx';
import { firmsUpSpan, timesText } from './times-text.ts';
import { useFillerEdit } from './use-material-edit.ts';

/** The putty's data sheet. */
export function FillerSheet() {
  const filler = useJob((state) => state.job.filler) ?? GENERIC_FILLER;
  const edit = useFillerEdit();
  const result = useEstimate((state) => state.result?.filler);
  const surface = useEstimate((state) => state.job?.climate?.surface);
  const here = result === undefined ? null : timesText({ ...result, span: firmsUpSpan(result) }, surface);
  return (
    <DataSheet heading="Data sheet of the putty" isGeneric={isGeneric(filler)}>
      <MixFields path="filler" word="putty" material={filler} edit={edit} />
      <OptionalQuantity
        label="for a mix of"
        known="The working time is for a stated mass"
        quantity="mass"
        path="filler.workingTime.mass"
        value={filler.workingTime.mass}
        start={300}
        help="A larger mass heats itself and sets sooner."
        onCommit={(mass) =>
          edit(
            'mass of the working time',
            ({ workingTime: { mass: _, ...time }, ...old }) => ({
              ...old,
              workingTime: mass === undefined ? time : { ...time, mass },
            }),
            'workingTime.mass',
          )
        }
      />
      <QuantityField
        label="Thickest layer"
        quantity="length"
        path="filler.mostBuild"
        value={filler.mostBuild}
        onCommit={(mostBuild) => edit('thickest layer', (old) => ({ ...old, mostBuild }), 'mostBuild')}
      />
      <QuantityField
        label="Thinnest layer"
        quantity="length"
        path="filler.leastBuild"
        value={filler.leastBuild ?? 0}
        min={0}
        step={0.1}
        onCommit={(leastBuild) => edit('thinnest layer', (old) => ({ ...old, leastBuild }), 'leastBuild')}
      />
      <QuantityField
        label="Largest grain"
        quantity="length"
        path="filler.largestGrain"
        value={filler.largestGrain ?? 0}
        min={0}
        step={0.1}
        onCommit={(largestGrain) =>
          edit('largest grain', (old) => ({ ...old, largestGrain }), 'largestGrain')
        }
      />
      <CureFields
        path="filler"
        word="putty"
        material={filler}
        edit={edit}
        hardStart={{ minutes: 480, at: filler.workingTime.at }}
        here={here}
      >
        <TimeSpan
          word="Firms up"
          known="The data sheet says when it firms up"
          path="filler.firmsUp"
          value={filler.firmsUp}
          start={{ from: 30, to: 45, at: filler.workingTime.at }}
          help="From then on a layer can be dressed."
          onCommit={(span, field) =>
            edit(
              'firming up of the putty',
              ({ firmsUp: _, ...old }) => (span === undefined ? old : { ...old, firmsUp: span }),
              `firmsUp.${field}`,
            )
          }
        />
      </CureFields>
      <ScaleFields path="filler" word="putty" material={filler} edit={edit} />
      <Packs
        path="filler.packs"
        packs={filler.packs ?? []}
        onCommit={(packs, field) => edit('packs of putty', (old) => ({ ...old, packs: [...packs] }), field)}
      />
    </DataSheet>
  );
}
