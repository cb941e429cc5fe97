import { GENERIC_COAT } from '../../../geometry/job/defaults.ts';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { useJob } from '../../job/job-store.ts';
import { useEstimate } from '../../worker/estimate-client.ts';
import { CureFields } from './CureFields.tsx';
import { DataSheet } from './DataSheet.tsx';
import { isGeneric } from './generic.ts';
import { MixFields } from './MixFields.tsx';
import { Packs } from './Packs.tsx';
import { ScaleFields } from './ScaleFields.tsx';
import { TimeSpan } from './TimeSpan.tsx';
import { overcoatSpan, timesText } from './times-text.ts';
import { useCoatEdit } from './use-material-edit.ts';

/** The coat's data sheet. */
export function CoatSheet() {
  const coat = useJob((state) => state.job.coat) ?? GENERIC_COAT;
  const edit = useCoatEdit();
  const result = useEstimate((state) => state.result?.coat);
  const surface = useEstimate((state) => state.job?.climate?.surface);
  const here = result === undefined ? null : timesText({ ...result, span: overcoatSpan(result) }, surface);
  return (
    <DataSheet heading="Data sheet of the coat" isGeneric={isGeneric(coat)}>
      <MixFields path="coat" word="coat" material={coat} edit={edit} />
      <QuantityField
        label="Coats"
        quantity="plain"
        path="coat.coats"
        value={coat.coats}
        min={1}
        max={10}
        onCommit={(coats) => edit('number of coats', (old) => ({ ...old, coats }), 'coats')}
      />
      <QuantityField
        label="Dry film of each"
        quantity="film"
        path="coat.dryFilm"
        value={coat.dryFilm}
        onCommit={(dryFilm) => edit('dry film', (old) => ({ ...old, dryFilm }), 'dryFilm')}
      />
      <QuantityField
        label="Solids by volume"
        quantity="percent"
        path="coat.solidsByVolume"
        value={coat.solidsByVolume}
        min={1}
        max={100}
        onCommit={(solidsByVolume) =>
          edit('solids by volume', (old) => ({ ...old, solidsByVolume }), 'solidsByVolume')
        }
      />
      <QuantityField
        label="Blast profile"
        quantity="film"
        path="coat.profile"
        value={coat.profile}
        min={0}
        help="The first coat fills it."
        onCommit={(profile) => edit('blast profile', (old) => ({ ...old, profile }), 'profile')}
      />
      <CureFields
        path="coat"
        word="coat"
        material={coat}
        edit={edit}
        hardStart={{ minutes: 960, at: coat.workingTime.at }}
        here={here}
      >
        <TimeSpan
          word="Coat over"
          known="The data sheet says when to coat over"
          path="coat.overcoat"
          value={coat.overcoat}
          start={{ from: 60, to: 240, at: coat.workingTime.at }}
          help="Later than that, the coat wants roughening first."
          onCommit={(span, field) =>
            edit(
              'coating over',
              ({ overcoat: _, ...old }) => (span === undefined ? old : { ...old, overcoat: span }),
              `overcoat.${field}`,
            )
          }
        />
      </CureFields>
      <ScaleFields path="coat" word="coat" material={coat} edit={edit} />
      <Packs
        path="coat.packs"
        packs={coat.packs ?? []}
        onCommit={(packs, field) => edit('packs of coat', (old) => ({ ...old, packs: [...packs] }), field)}
      />
    </DataSheet>
  );
}
