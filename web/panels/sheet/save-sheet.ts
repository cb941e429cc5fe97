import type { JobFile } from '../../../geometry/job/job-file.ts';
import { html } from '../../../geometry/sheet/markup.ts';
import { SHEET_STYLE } from '../../../geometry/sheet/sheet-style.ts';
import { handOver } from '../../files/hand-over.ts';
import { nameFor } from '../../files/save-job.ts';

/**
 * Hands the sheet over as a page of its own that needs nothing beside it.
 * @param sheet  body of the page, as the engine wrote it
 */
export function saveSheet(sheet: string, job: JobFile): void {
  const page = html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${job.title?.trim() || 'Repair sheet'}</title>
<style>${{ markup: SHEET_STYLE }}</style>
</head>
<body>
${{ markup: sheet }}
</body>
</html>
`.markup;
  handOver(nameFor(job).replace(/\.job\.json$/, '.sheet.html'), page, 'text/html');
}
