import { useState } from 'react';

/**
 * Why the last choice was refused, for controls that have no text to keep. Gone as soon as the value is another.
 * @param value  the one chosen now
 */
export function useRefusal(value: string | boolean): {
  readonly faults: readonly string[];
  set(faults: readonly string[]): void;
} {
  const [refusal, setRefusal] = useState<{
    readonly of: string | boolean;
    readonly faults: readonly string[];
  }>();
  const isStill = refusal !== undefined && refusal.of === value;
  return {
    faults: isStill ? refusal.faults : [],
    set: (faults) => setRefusal(faults.length === 0 ? undefined : { of: value, faults }),
  };
}
