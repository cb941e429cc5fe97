import { FieldError } from 'react-aria-components';

/** Why a field's value was not taken: tied to the field and read out when it appears. Inside a field of react-aria. */
export function FaultList({ faults }: { readonly faults: readonly string[] }) {
  return (
    <FieldError className="field-faults" elementType="div">
      <div role="alert">
        {faults.map((fault) => (
          <p key={fault}>{fault}</p>
        ))}
      </div>
    </FieldError>
  );
}
