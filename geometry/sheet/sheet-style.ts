import { FLOW_STYLE } from './flow-chart-style.ts';
import { GAP_CHART_STYLE } from './gap-chart-style.ts';
import { SECTION_STYLE } from './section-style.ts';

/**
 * How the sheet looks on screen and on paper (A4 and Letter), scoped under `.sheet`. Always dark on white: it is paper. Nothing
 * depends on colour alone, so a grey printer loses nothing.
 */
export const SHEET_STYLE = `
@page { margin: 14mm 13mm 16mm; }
.sheet { box-sizing: border-box; max-width: 184mm; margin: 0 auto; padding: 6mm; background: #fff; color: #1d1d1b;
  font: 10pt/1.4 "Atkinson Hyperlegible Next", "Atkinson Hyperlegible Next Variable", system-ui, sans-serif;
  font-variant-numeric: tabular-nums; overflow-wrap: break-word; }
.sheet * { box-sizing: border-box; }
.sheet p, .sheet ul, .sheet dl, .sheet figure { margin: 0; padding: 0; }
.sheet section { margin-top: 7mm; }
.sheet h1 { margin: 0; font-size: 17pt; line-height: 1.2; font-weight: 650; }
.sheet h2, .sheet caption, .sheet figcaption { margin: 0 0 2mm; font-size: 10pt; font-weight: 650; text-align: left; }
.sheet cite { font-style: normal; color: #55534e; }
.sheet code { font-family: inherit; font-weight: 650; }
.sheet-notes { white-space: pre-line; }
.sheet-blanks { display: flex; flex-wrap: wrap; gap: 3mm 6mm; padding-top: 5mm !important; }
.sheet-blanks span { flex: 1 1 40mm; border-bottom: 0.3mm solid #1d1d1b; padding-bottom: 1mm; color: #55534e; }
.sheet-figures { display: grid; grid-template-columns: 1fr 1fr; gap: 5mm 8mm; border-block: 0.3mm solid #1d1d1b; padding: 4mm 0; }
.sheet-card { break-inside: avoid; }
.sheet-lead { font-size: 16pt; line-height: 1.2; font-weight: 650; text-wrap: balance; padding-bottom: 1mm !important; }
.sheet-warnings { border: 0.6mm solid #1d1d1b; padding: 3mm 4mm; break-inside: avoid; }
.sheet li { margin-left: 5mm; padding-bottom: 0.8mm; break-inside: avoid; }
.sheet-picture { break-inside: avoid; padding-bottom: 4mm !important; }
.sheet table { width: 100%; border-collapse: collapse; margin-bottom: 6mm; }
.sheet ul + table { margin-top: 4mm; }
.sheet th { font-weight: 400; color: #55534e; vertical-align: bottom; border-bottom: 0.3mm solid #1d1d1b; }
.sheet th, .sheet td { padding: 0.8mm 0 0.8mm 3mm; }
.sheet th:first-child, .sheet td:first-child { padding-left: 0; }
.sheet td { vertical-align: top; border-bottom: 0.15mm solid #c9c6bf; }
.sheet thead { display: table-header-group; }
.sheet tr { break-inside: avoid; }
.sheet-number { text-align: right; white-space: nowrap; }
.sheet-word { text-align: left; }
.sheet-number:first-child { width: 9mm; }
.sheet-tick { width: 11mm; text-align: right; }
.sheet td.sheet-tick::before { content: ""; display: inline-block; width: 3.2mm; height: 3.2mm; border: 0.3mm solid #1d1d1b; vertical-align: -0.4mm; }
.sheet-rest { margin-bottom: 2mm !important; }
.sheet table:has(+ .sheet-rest) { margin-bottom: 2mm; }
.sheet-rest:last-of-type { margin-bottom: 5mm !important; }
.sheet dt { font-weight: 650; break-after: avoid; }
.sheet dd { margin: 0 0 1.5mm; break-inside: avoid; }
.sheet-signatures { display: flex; flex-wrap: wrap; gap: 4mm 8mm; padding-top: 10mm; break-inside: avoid; }
.sheet-signatures p { flex: 1 1 45mm; border-top: 0.3mm solid #1d1d1b; padding-top: 1mm; color: #55534e; }
.flat-map { display: block; width: 100%; max-height: 130mm; }
${SECTION_STYLE}${GAP_CHART_STYLE}${FLOW_STYLE}@media screen and (max-width: 600px) { .sheet { padding: 4mm; } .sheet-figures { grid-template-columns: 1fr; } .sheet table { font-size: 8.5pt; } .sheet table { min-width: 130mm; } .sheet-tick { display: none; } }
@media print { .sheet { max-width: none; padding: 0; } .sheet, .sheet * { print-color-adjust: exact; -webkit-print-color-adjust: exact; } }
`;
