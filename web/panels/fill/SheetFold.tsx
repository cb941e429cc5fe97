import type { ReactNode } from 'react';
import { Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import { DisclosureButton } from '../DisclosureButton.tsx';

/** A group of values within a data sheet that most jobs leave as they are, folded. */
export function SheetFold({ heading, children }: { readonly heading: string; readonly children: ReactNode }) {
  return (
    <Disclosure className="disclosure sheet-fold">
      <Heading level={3}>
        <DisclosureButton>{heading}</DisclosureButton>
      </Heading>
      <DisclosurePanel className="disclosure-panel">
        <div className="rows">{children}</div>
      </DisclosurePanel>
    </Disclosure>
  );
}
