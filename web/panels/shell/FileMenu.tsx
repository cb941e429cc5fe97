import { ChevronDown } from 'lucide-react';
import { Button, Header, Menu, MenuItem, MenuSection, MenuTrigger } from 'react-aria-components';
import { chooseFile } from '../../files/open-job.ts';
import { openSample, SAMPLES } from '../../files/samples.ts';
import { saveJob } from '../../files/save-job.ts';
import { MenuPopover } from '../MenuPopover.tsx';
import { startOwn } from './start-own.ts';
import { ThemeSection } from './ThemeMenu.tsx';
import { useScreen } from './use-screen.ts';

/** New job, open, save, and the worked samples. */
export function FileMenu() {
  const isCompact = useScreen('compact');
  return (
    <MenuTrigger>
      <Button className="button file-button">
        File
        <ChevronDown aria-hidden="true" />
      </Button>
      <MenuPopover placement="bottom start">
        <Menu className="menu">
          <MenuItem className="menu-item" textValue="New job" onAction={startOwn}>
            <span className="menu-label">New job</span>
          </MenuItem>
          <MenuItem className="menu-item" textValue="Open a file" onAction={chooseFile}>
            <span className="menu-label">Open a file</span>
            <kbd>Ctrl O</kbd>
          </MenuItem>
          <MenuItem className="menu-item" textValue="Save to a file" onAction={() => void saveJob()}>
            <span className="menu-label">Save to a file</span>
            <kbd>Ctrl S</kbd>
          </MenuItem>
          <MenuSection className="menu-section">
            <Header className="menu-header">Worked samples</Header>
            {SAMPLES.map((sample) => (
              <MenuItem
                key={sample.name}
                className="menu-item"
                textValue={sample.title}
                onAction={() => void openSample(sample)}
              >
                <span className="menu-label">{sample.title}</span>
              </MenuItem>
            ))}
          </MenuSection>
          {isCompact && <ThemeSection />}
        </Menu>
      </MenuPopover>
    </MenuTrigger>
  );
}
