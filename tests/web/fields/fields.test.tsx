import { renderToStaticMarkup } from 'react-dom/server';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { ChoiceField } from '../../../web/fields/ChoiceField.tsx';
import { QuantityField } from '../../../web/fields/QuantityField.tsx';
import { SwitchField } from '../../../web/fields/SwitchField.tsx';
import { TextInput } from '../../../web/fields/TextInput.tsx';
import { type ViewState, viewStore } from '../../../web/view/view-store.ts';

const none = () => [];
const bore = (
  <QuantityField
    label="Bore diameter"
    quantity="length"
    value={120}
    path="parts[0].boreDiameter"
    min={1}
    max={320}
    onCommit={none}
  />
);

/** The text of the elements that an element's attribute points at. */
function pointedAt(markup: string, attribute: string): string {
  const ids = new RegExp(`<input[^>]*${attribute}="([^"]*)"`).exec(markup)?.[1].split(' ') ?? [];
  const texts = ids.map(
    (id) => new RegExp(`id="${id}"[^>]*>(.*?)</(?:span|div|label)>`, 's').exec(markup)?.[1] ?? '',
  );
  return texts
    .join(' ')
    .replace(/<[^>]*>/g, '')
    .trim();
}

/** Markup made outside a browser is made of a store's first state. */
function begin(view: Partial<ViewState>): void {
  vi.spyOn(viewStore, 'getInitialState').mockReturnValue({ ...viewStore.getState(), ...view });
}

afterEach(() => vi.restoreAllMocks());

describe('a number field as it first stands there', () => {
  it('has its label, its value, its unit, and the range in its description before anything is wrong', () => {
    const markup = renderToStaticMarkup(bore);
    expect(markup).toContain('value="120"');
    expect(pointedAt(markup, 'aria-labelledby') || markup).toContain('Bore diameter');
    expect(pointedAt(markup, 'aria-describedby')).toContain('1 to 320 mm');
    expect(markup).toContain('aria-label="Bore diameter: less"');
    expect(markup).toContain('aria-label="Bore diameter: more"');
    expect(markup).not.toContain('aria-invalid');
  });

  it('follows the units of the screen, the value stays what it is', () => {
    begin({ units: 'in' });
    const markup = renderToStaticMarkup(bore);
    expect(markup).toContain('value="4.7244"');
    expect(markup).not.toMatch(/\bmm\b/);
  });

  it('shows what was refused last time, with the reason tied to it', () => {
    const path = 'parts[0].boreDiameter';
    begin({ drafts: { [path]: '330' }, draftFaults: { [path]: ['330 is too much.'] } });
    const markup = renderToStaticMarkup(bore);
    expect(markup).toContain('value="330"');
    expect(markup).toContain('aria-invalid="true"');
    expect(markup).toMatch(/role="alert"><p>330 is too much\.<\/p>/);
  });

  it('is empty when there is no value yet', () => {
    const markup = renderToStaticMarkup(
      <QuantityField
        label="Humidity"
        quantity="percent"
        value={null}
        path="climate.humidity"
        onCommit={none}
      />,
    );
    expect(markup).toContain('value=""');
  });
});

describe('the other fields', () => {
  it('have their labels and what is chosen', () => {
    const choices = [
      { value: 'fill', label: 'Fill' },
      { value: 'leave', label: 'Leave' },
    ] as const;
    const choice = renderToStaticMarkup(
      <ChoiceField label="This region" choices={choices} value="leave" onCommit={none} />,
    );
    expect(choice).toContain('role="radiogroup"');
    expect(choice).toMatch(/<input[^>]*checked=""[^>]*value="leave"|<input[^>]*value="leave"[^>]*checked=""/);
    expect(renderToStaticMarkup(<SwitchField label="Dished" value onCommit={none} />)).toContain(
      'role="switch"',
    );
    const text = renderToStaticMarkup(
      <TextInput label="Title" value="Plate 4" path="title" onCommit={none} />,
    );
    expect(text).toContain('value="Plate 4"');
    expect(text).toContain('>Title</label>');
  });
});
