import { type ReactNode, useContext } from 'react';
import { OverlayTriggerStateContext, Popover, type PopoverProps } from 'react-aria-components';
import './menu.css';

interface MenuPopoverProps extends Pick<PopoverProps, 'placement'> {
  readonly className?: string;
  readonly children: ReactNode;
}

/** What opens below a button, beside the work and never in its way. Stands inside the page's main part, where readers of landmarks find it. */
export function MenuPopover({ className = '', placement, children }: MenuPopoverProps) {
  // Drawn anew when it opens: the main part is on the page by then.
  const isOpen = useContext(OverlayTriggerStateContext)?.isOpen ?? false;
  const main = isOpen ? document.querySelector('main') : null;
  return (
    <Popover
      className={`menu-popover ${className}`}
      isNonModal
      {...(placement && { placement })}
      {...(main && { UNSTABLE_portalContainer: main })}
    >
      {children}
    </Popover>
  );
}
