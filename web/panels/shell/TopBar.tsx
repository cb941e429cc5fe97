import { FileMenu } from './FileMenu.tsx';
import { JobTitle } from './JobTitle.tsx';
import { KeyList } from './KeyList.tsx';
import { ThemeMenu } from './ThemeMenu.tsx';
import { UndoRedo } from './UndoRedo.tsx';
import { UnitSwitch } from './UnitSwitch.tsx';
import { useScreen } from './use-screen.ts';
import './TopBar.css';
import './pair.css';

/** The job by its name, its file, the way back, and how the screen shows things. */
export function TopBar() {
  const isCompact = useScreen('compact');
  return (
    <header className="top-bar">
      <h1 className="unseen">Fettle</h1>
      <FileMenu />
      <JobTitle />
      <UndoRedo />
      <UnitSwitch />
      {!isCompact && <ThemeMenu />}
      <KeyList />
    </header>
  );
}
