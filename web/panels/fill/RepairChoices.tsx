import { USUAL_REPAIR, wholeRepair } from '../../../geometry/job/defaults.ts';
import type { RepairFile } from '../../../geometry/job/job-file.ts';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { useJob } from '../../job/job-store.ts';
import { useView } from '../../view/view-store.ts';
import { OptionalQuantity } from '../OptionalQuantity.tsx';
import { valueText } from '../wear/face-words.ts';
import { CoatedFaces } from './CoatedFaces.tsx';
import { CoatWaste } from './CoatWaste.tsx';

/** The choices of the repair that are the person's own. */
export function RepairChoices() {
  const repair = wholeRepair(useJob((state) => state.job.repair));
  const surface = useJob((state) => state.job.climate?.surface);
  const edit = useJob((state) => state.edit);
  const units = useView((view) => view.units);
  const usual = valueText(USUAL_REPAIR.leaveBelow, 'length', units);
  const set = (label: string, change: RepairFile, field: keyof RepairFile) =>
    edit(label, (job) => ({ ...job, repair: { ...job.repair, ...change } }), `repair.${field}`);
  return (
    <section className="section">
      <h2>Choices</h2>
      <div className="rows">
        <QuantityField
          label="Leave wear shallower than"
          quantity="length"
          path="repair.leaveBelow"
          value={repair.leaveBelow}
          min={0}
          step={0.1}
          help={`The coat fills what is left. ${usual} is common on light-duty pumps.`}
          onCommit={(leaveBelow) => set('leave below', { leaveBelow }, 'leaveBelow')}
        />
        <QuantityField
          label="Keep free for the coat"
          quantity="length"
          path="repair.coatAllowance"
          value={repair.coatAllowance}
          min={0}
          max={100}
          step={0.1}
          help="On the running faces the putty stops this far below the surface."
          onCommit={(coatAllowance) => set('allowance for the coat', { coatAllowance }, 'coatAllowance')}
        />
        <QuantityField
          label="Overbuild"
          quantity="length"
          path="repair.overbuild"
          value={repair.overbuild}
          min={0}
          max={100}
          step={0.1}
          help="Put on above the surface, then dressed off."
          onCommit={(overbuild) => set('overbuild', { overbuild }, 'overbuild')}
        />
        <QuantityField
          label="Waste of putty"
          quantity="percent"
          path="repair.fillerWaste"
          value={repair.fillerWaste}
          min={0}
          max={500}
          onCommit={(fillerWaste) => set('waste of putty', { fillerWaste }, 'fillerWaste')}
        />
        <CoatWaste
          waste={repair.coatWaste}
          onCommit={(coatWaste) => set('waste of coat', { coatWaste }, 'coatWaste')}
        />
        <QuantityField
          label="You fill and level"
          quantity="rate"
          path="repair.applicationRate"
          value={repair.applicationRate}
          onCommit={(applicationRate) => set('application rate', { applicationRate }, 'applicationRate')}
        />
        <OptionalQuantity
          label="The part is at"
          known="The temperature of the part is known"
          quantity="temperature"
          path="climate.surface"
          value={surface}
          start={20}
          help="Warm putty sets sooner."
          onCommit={(degrees) =>
            edit(
              'temperature of the part',
              ({ climate: { surface: _, ...climate } = {}, ...job }) => ({
                ...job,
                climate: degrees === undefined ? climate : { ...climate, surface: degrees },
              }),
              'climate.surface',
            )
          }
        />
      </div>
      <CoatedFaces />
    </section>
  );
}
