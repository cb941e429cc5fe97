/** How a section looks on paper: dark on white, putty hatched, coat dotted, so that a grey printer loses nothing. */
export const SECTION_STYLE = `.sheet .section-plot { display: block; width: 100%; }
.section-plot text { fill: #1d1d1b; font-variant-numeric: tabular-nums; }
.section-plot .section-quiet { fill: #55534e; }
.section-plot .section-strong { font-weight: 650; }
.section-plot .section-halo { paint-order: stroke; stroke: #fff; stroke-width: 3px; stroke-linejoin: round; }
.section-metal { fill: #d9d6cf; }
.section-paper { fill: #fff; }
.section-worn, .section-behind, .section-axis, .section-lead, .section-reading { fill: none; stroke: #1d1d1b; stroke-linejoin: round; }
.section-worn { stroke-width: 1.8px; }
.section-sound { fill: none; stroke: #1d1d1b; stroke-width: 1px; stroke-dasharray: 7 3; }
.section-axis, .section-lead, .section-behind { stroke-width: 0.8px; }
.section-grid { fill: none; stroke: #c9c6bf; stroke-width: 0.6px; }
.section-hatch { fill: none; stroke: #1d1d1b; stroke-width: 1px; }
.section-dot { fill: #1d1d1b; }
.section-shape { stroke: #1d1d1b; stroke-width: 0.8px; stroke-linejoin: round; }
.section-reading { stroke-width: 1.2px; }
.section-reading-dot { fill: #fff; stroke: #1d1d1b; stroke-width: 1.4px; }
.section-deepest { fill: #1d1d1b; }
`;
