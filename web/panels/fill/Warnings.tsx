import { TriangleAlert } from 'lucide-react';
import type { WarningResult } from '../../../geometry/sheet/result.ts';

/** What can be worked out and should worry someone. */
export function Warnings({ warnings }: { readonly warnings: readonly WarningResult[] }) {
  if (warnings.length === 0) return null;
  return (
    <section className="section" aria-label="Warnings">
      <h2>Look at this first</h2>
      <ul className="warnings">
        {warnings.map(({ text }) => (
          <li key={text}>
            <TriangleAlert aria-hidden="true" />
            {text}
          </li>
        ))}
      </ul>
    </section>
  );
}
