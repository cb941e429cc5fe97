import '@fontsource-variable/atkinson-hyperlegible-next';
import './style.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { startJob } from './files/start-job.ts';
import { Shell } from './panels/Shell.tsx';
import { followTheme } from './panels/shell/follow-theme.ts';
import { startEstimating } from './worker/estimate-client.ts';

const root = document.getElementById('root');
if (root === null) throw new Error('main: index.html has no element #root');

followTheme();
await startJob();
startEstimating();
createRoot(root).render(
  <StrictMode>
    <Shell />
  </StrictMode>,
);
