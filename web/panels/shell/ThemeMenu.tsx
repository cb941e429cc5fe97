import { Check, Monitor, Moon, Sun } from 'lucide-react';
import { Button, Header, Menu, MenuItem, MenuSection, MenuTrigger } from 'react-aria-components';
import type { Theme } from '../../view/kept-view.ts';
import { useView, viewStore } from '../../view/view-store.ts';
import { MenuPopover } from '../MenuPopover.tsx';

const THEMES = [
  { name: 'system', label: 'As the system', Icon: Monitor },
  { name: 'light', label: 'Light', Icon: Sun },
  { name: 'dark', label: 'Dark', Icon: Moon },
] as const satisfies readonly { readonly name: Theme; readonly label: string; readonly Icon: typeof Sun }[];

/** Light, dark, or as the system has it. */
export function ThemeMenu() {
  const theme = useView((view) => view.theme);
  const { label, Icon } = THEMES.find(({ name }) => name === theme) ?? THEMES[0];
  return (
    <MenuTrigger>
      <Button className="button button-bare" aria-label={`Light or dark: ${label}`}>
        <Icon aria-hidden="true" />
        {theme === 'system' ? 'System' : label}
      </Button>
      <MenuPopover placement="bottom end">
        <Menu className="menu" aria-label="Light or dark">
          <ThemeSection />
        </Menu>
      </MenuPopover>
    </MenuTrigger>
  );
}

/** The three choices as a section of a menu. */
export function ThemeSection() {
  const theme = useView((view) => view.theme);
  return (
    <MenuSection
      className="menu-section"
      selectionMode="single"
      disallowEmptySelection
      selectedKeys={[theme]}
      onSelectionChange={(keys) => {
        const chosen = THEMES.find(({ name }) => keys !== 'all' && keys.has(name));
        if (chosen !== undefined) viewStore.getState().set({ theme: chosen.name });
      }}
    >
      <Header className="menu-header">Light or dark</Header>
      {THEMES.map(({ name, label, Icon }) => (
        <MenuItem key={name} id={name} className="menu-item" textValue={label}>
          <Icon aria-hidden="true" />
          <span className="menu-label">{label}</span>
          <Check className="menu-check" aria-hidden="true" />
        </MenuItem>
      ))}
    </MenuSection>
  );
}
