/** How the curves of a flow test look on paper: dark on white, runs told apart by dash, mark and shade, so that a grey printer loses nothing. */
export const FLOW_STYLE = `.sheet .flow-plot { display: block; width: 100%; break-inside: avoid; padding-bottom: 4mm; }
.flow-plot text { fill: #1d1d1b; font-variant-numeric: tabular-nums; }
.flow-plot .flow-quiet { fill: #55534e; }
.flow-plot .flow-strong { font-weight: 650; }
.flow-paper { fill: #fff; }
.flow-grid { fill: none; stroke: #d9d6cf; stroke-width: 0.6px; }
.flow-axis { fill: none; stroke: #1d1d1b; stroke-width: 0.8px; }
.flow-line { fill: none; stroke: #1d1d1b; stroke-width: 1.5px; stroke-linejoin: round; }
.flow-line-after { stroke-width: 2.2px; }
.flow-line-before { stroke-dasharray: 8 4; }
.flow-line-new { stroke: #7d7a73; stroke-dasharray: 2 3; }
.flow-line-other { stroke: #55534e; stroke-dasharray: 10 3 2 3; }
.flow-line-further { stroke: #7d7a73; stroke-dasharray: 14 4; }
.flow-mark { fill: #fff; stroke: #1d1d1b; stroke-width: 1.2px; stroke-linejoin: round; }
.flow-mark-after { fill: #1d1d1b; }
.flow-mark-new { stroke: #7d7a73; }
.flow-duty { fill: none; stroke: #1d1d1b; stroke-width: 0.9px; stroke-dasharray: 5 2 1 2; }
.flow-error { fill: none; stroke: #1d1d1b; stroke-width: 1px; }
.flow-cross { fill: none; stroke: #1d1d1b; stroke-width: 2.6px; }
`;
