import { Button, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import { type PuttyAdvice, type PuttyClass, SEVERITY_WORDS } from '../../../geometry/material/severity.ts';
import { type Choice, ChoiceField } from '../../fields/ChoiceField.tsx';
import { useJob } from '../../job/job-store.ts';
import { DisclosureButton } from '../DisclosureButton.tsx';
import { questionsFor, type ServiceFile, type ServiceQuestion, withSolids } from './service-answers.ts';
import './WhichPutty.css';

/** Which class of putty the service asks for, from questions a fitter can answer; folded while there is nothing to say. */
export function WhichPutty({ advice }: { readonly advice: PuttyAdvice | null }) {
  const service = useJob((state) => state.job.service);
  const edit = useJob((state) => state.edit);
  const set = (change: (old: ServiceFile | undefined) => ServiceFile | undefined) =>
    edit(
      'service of the pump',
      ({ service: old, ...job }) => {
        const next = change(old);
        return next === undefined ? job : { ...job, service: next };
      },
      'service',
    );
  return (
    <section className="section" aria-label="Which putty">
      <Disclosure className="disclosure">
        <Heading level={2}>
          <DisclosureButton>Which putty</DisclosureButton>
        </Heading>
        {service === undefined && <p className="quiet">Say what the pump moves, for advice on the putty.</p>}
        {service !== undefined && advice !== null && <Verdict advice={advice} />}
        {service !== undefined && advice === null && <p className="quiet">{STILL_TO_SAY}</p>}
        <DisclosurePanel className="disclosure-panel">
          <div className="rows which-putty">
            <ChoiceField<ServiceFile['solids'] | ''>
              label="What does the pump carry along?"
              choices={SOLIDS}
              value={service?.solids ?? ''}
              help="Soft: wood, peel, sludge. Hard: sand, grit, scale."
              onCommit={(solids) => (solids === '' ? [] : set((old) => withSolids(old, solids)))}
            />
            {questionsFor(service).map((question) => (
              <ChoiceField<string>
                key={question}
                {...QUESTIONS[question]}
                value={service?.[question] ?? ''}
                onCommit={(answer) => set((old) => old && ({ ...old, [question]: answer } as ServiceFile))}
              />
            ))}
            {service !== undefined && (
              <Button className="button" onPress={() => void set(() => undefined)}>
                Clear the answers
              </Button>
            )}
          </div>
        </DisclosurePanel>
      </Disclosure>
    </section>
  );
}

function Verdict({ advice: { severity, putty, reasons, source } }: { readonly advice: PuttyAdvice }) {
  return (
    <div className="putty-advice" role="status">
      <p>
        <strong>{PUTTY_WORDS[putty]}</strong>
      </p>
      <p>The service is {SEVERITY_WORDS[severity]}.</p>
      {reasons.map((reason) => (
        <p key={reason}>{reason}</p>
      ))}
      <p className="quiet">{source}.</p>
    </div>
  );
}

const PUTTY_WORDS: Readonly<Record<PuttyClass, string>> = {
  'fine-paste': 'Advice: a fine paste',
  'coarse-bead': 'Advice: a putty with coarse ceramic beads',
};

const STILL_TO_SAY = 'Answer the questions below for advice.';

const SOLIDS: readonly Choice<ServiceFile['solids']>[] = [
  { value: 'none', label: 'Clean liquid' },
  { value: 'soft', label: 'Soft solids' },
  { value: 'hard', label: 'Hard grains' },
];

const QUESTIONS: Readonly<
  Record<
    ServiceQuestion,
    { readonly label: string; readonly help?: string; readonly choices: readonly Choice<string>[] }
  >
> = {
  grains: {
    label: 'Rub some between your fingers: do you feel grains?',
    choices: [
      { value: 'silt', label: 'No grains' },
      { value: 'sand', label: 'Grains under 2 mm' },
      { value: 'coarse', label: '2 mm and more' },
    ],
  },
  concentration: {
    label: 'How much is carried along?',
    help: 'By weight. A trace: clear water with some. Under 5 %: cloudy.',
    choices: [
      { value: 'trace', label: 'A trace' },
      { value: 'little', label: 'Under 5 %' },
      { value: 'much', label: '5 % and more' },
    ],
  },
  shape: {
    label: 'Under a magnifier, the grains are',
    choices: [
      { value: 'rounded', label: 'Rounded' },
      { value: 'angular', label: 'Angular' },
    ],
  },
};
