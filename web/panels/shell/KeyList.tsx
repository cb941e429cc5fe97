import { Keyboard as KeyboardIcon } from 'lucide-react';
import { useEffect, useState } from 'react';
import { Button, Dialog, DialogTrigger, Heading } from 'react-aria-components';
import { MenuPopover } from '../MenuPopover.tsx';
import { answerKeys, KEYS } from './keys.ts';
import './KeyList.css';

/** The list of keys, under its button and under `?`. */
export function KeyList() {
  const [isOpen, setOpen] = useState(false);
  useEffect(() => answerKeys(() => setOpen(true)), []);
  return (
    <DialogTrigger isOpen={isOpen} onOpenChange={setOpen}>
      <Button className="button button-bare key-button">
        <KeyboardIcon aria-hidden="true" />
        Keys
      </Button>
      <MenuPopover className="key-popover" placement="bottom end">
        <Dialog className="key-dialog">
          <Heading slot="title">Keys</Heading>
          <dl className="key-list">
            {KEYS.map(({ keys, does }) => (
              <div key={keys}>
                <dt>{keys}</dt>
                <dd>{does}</dd>
              </div>
            ))}
          </dl>
        </Dialog>
      </MenuPopover>
    </DialogTrigger>
  );
}
