import { Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import { DisclosureButton } from '../DisclosureButton.tsx';
import type { Working } from './workings.ts';
import './WorkingOut.css';

interface WorkingOutProps {
  /** "the putty": what stands in the question. */
  readonly of: string;
  readonly workings: readonly Working[];
}

/** "How was this worked out", folded behind the figures it explains. */
export function WorkingOut({ of, workings }: WorkingOutProps) {
  return (
    <Disclosure className="disclosure working">
      <Heading level={3}>
        <DisclosureButton>How was {of} worked out?</DisclosureButton>
      </Heading>
      <DisclosurePanel className="disclosure-panel">
        <dl className="workings">
          {workings.map(({ what, rule, numbers, source }) => (
            <div key={what}>
              <dt>{what}</dt>
              <dd>{rule}</dd>
              {numbers.map((line) => (
                <dd key={line} className="working-numbers">
                  {line}
                </dd>
              ))}
              <dd className="quiet">{source}</dd>
            </div>
          ))}
        </dl>
      </DisclosurePanel>
    </Disclosure>
  );
}
