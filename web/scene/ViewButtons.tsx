import { Button } from 'react-aria-components';
import type { ViewName } from './camera.ts';
import './view-buttons.css';

const VIEWS = [
  { name: 'front', label: 'Front' },
  { name: 'angled', label: 'Angled' },
  { name: 'side', label: 'Side' },
] as const satisfies readonly { readonly name: ViewName; readonly label: string }[];

/** Shows the part from a set side, all of it. */
export function ViewButtons({ go }: { readonly go: (view: ViewName) => void }) {
  return (
    <fieldset className="view-buttons">
      <legend className="unseen">View</legend>
      {VIEWS.map(({ name, label }) => (
        <Button key={name} className="view-button" onPress={() => go(name)}>
          {label}
        </Button>
      ))}
    </fieldset>
  );
}
