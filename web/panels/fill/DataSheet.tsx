import { CircleAlert } from 'lucide-react';
import type { ReactNode } from 'react';
import { Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import { DisclosureButton } from '../DisclosureButton.tsx';
import './DataSheet.css';

interface DataSheetProps {
  readonly heading: string;
  /** Nobody's product yet. */
  readonly isGeneric: boolean;
  readonly children: ReactNode;
}

/** The values of one material, folded; says so while they are not the person's own. */
export function DataSheet({ heading, isGeneric, children }: DataSheetProps) {
  return (
    <Disclosure className="disclosure data-sheet">
      <Heading level={2}>
        <DisclosureButton>{heading}</DisclosureButton>
      </Heading>
      {isGeneric && (
        <p className="data-sheet-generic">
          <CircleAlert aria-hidden="true" />
          Generic values: replace with your data sheet, and give them its name.
        </p>
      )}
      <DisclosurePanel className="disclosure-panel">
        <div className="rows">{children}</div>
      </DisclosurePanel>
    </Disclosure>
  );
}
