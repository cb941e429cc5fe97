import { TriangleAlert } from 'lucide-react';
import { type Fault, faultText } from '../../geometry/job/fault.ts';

/** Why something that is no field was not done: beside its button, read out when it appears. */
export function Refusal({ faults }: { readonly faults: readonly Fault[] }) {
  return (
    <ul className="faults" role="alert">
      {faults.map((fault) => (
        <li key={faultText(fault)}>
          <TriangleAlert aria-hidden="true" />
          {faultText(fault)}
        </li>
      ))}
    </ul>
  );
}
