import { useId } from 'react';
import { viewStore } from '../view/view-store.ts';
import './exaggeration.css';

const MOST = 10;

/** How much deeper than true the wear is drawn. */
export function Exaggeration({ times, wanted }: { readonly times: number; readonly wanted: number }) {
  const id = useId();
  const words = times === 1 ? 'Depth drawn true' : `Depth drawn ${times}x`;
  return (
    <div className="exaggeration">
      <label htmlFor={id}>
        {words}
        {times < wanted && <span className="quiet"> (all the wall has room for)</span>}
      </label>
      <input
        id={id}
        type="range"
        min={1}
        max={MOST}
        step={1}
        value={wanted}
        aria-valuetext={words}
        onChange={({ target }) => viewStore.getState().set({ exaggeration: target.valueAsNumber })}
      />
    </div>
  );
}
