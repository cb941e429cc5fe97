import { ChevronRight } from 'lucide-react';
import type { ReactNode } from 'react';
import { Button } from 'react-aria-components';
import './Disclosure.css';

/** What opens a folded piece of a panel. Inside a heading of a Disclosure. */
export function DisclosureButton({ children }: { readonly children: ReactNode }) {
  return (
    <Button slot="trigger" className="disclosure-button">
      <ChevronRight aria-hidden="true" />
      <span>{children}</span>
    </Button>
  );
}
