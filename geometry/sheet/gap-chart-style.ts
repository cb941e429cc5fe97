/** How the gap looks on paper: dark on white, the states told apart by shade and by line, so that a grey printer loses nothing. */
export const GAP_CHART_STYLE = `.sheet .gap-chart { display: block; width: 100%; }
.sheet ul + .sheet-picture { padding-top: 3mm; }
.gap-chart text { fill: #1d1d1b; font-variant-numeric: tabular-nums; }
.gap-chart .gap-chart-quiet { fill: #55534e; }
.gap-chart .gap-chart-strong { font-weight: 650; }
.gap-chart .gap-chart-halo { paint-order: stroke; stroke: #fff; stroke-width: 3px; stroke-linejoin: round; }
.gap-chart-paper, .gap-chart-ground { fill: #fff; }
.gap-chart-band { stroke: none; }
.gap-chart-hatch { fill: none; stroke: #c9c6bf; stroke-width: 1px; }
.gap-chart-grid { fill: none; stroke: #dedbd4; stroke-width: 0.6px; }
.gap-chart-axis, .gap-chart-limit, .gap-chart-worst, .gap-chart-likely, .gap-chart-touch, .gap-chart-mean { fill: none; stroke: #1d1d1b; }
.gap-chart-axis, .gap-chart-limit { stroke-width: 0.8px; }
.gap-chart-limit-box { stroke: #1d1d1b; stroke-width: 0.8px; }
.gap-chart-worst { stroke-width: 1px; stroke-dasharray: 6 3; }
.gap-chart-likely { stroke-width: 1px; stroke-dasharray: 1 3; stroke-linecap: round; }
.gap-chart-touch { stroke-width: 2px; }
.gap-chart-area { stroke: #1d1d1b; stroke-width: 0.6px; stroke-linejoin: round; }
.gap-chart-found { fill: #1d1d1b; fill-opacity: 0.07; stroke-dasharray: 2 2; }
.gap-chart-filled { fill: #1d1d1b; fill-opacity: 0.16; stroke-dasharray: 5 2; }
.gap-chart-coated { fill: #1d1d1b; fill-opacity: 0.34; }
.gap-chart-mean { stroke-linejoin: round; }
.gap-chart-found-mean { stroke-width: 1.2px; stroke-dasharray: 2 2; }
.gap-chart-filled-mean { stroke-width: 1.4px; stroke-dasharray: 7 3; }
.gap-chart-coated-mean { stroke-width: 2.2px; }
.gap-chart-spot { fill: #fff; stroke: #1d1d1b; stroke-width: 1.8px; }
`;
