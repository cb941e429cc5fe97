import { useMemo, useRef } from 'react';
import { flowChart } from '../../../geometry/sheet/flow-chart.ts';
import type { FlowTestResult } from '../../../geometry/sheet/flow-result.ts';
import { flowLines } from '../../../geometry/sheet/flow-text.ts';
import { useWidth } from '../use-width.ts';
import './FlowCurves.css';

/** px of letters, and how high the plot of heads is against its width: there is less width than on paper. */
const SIZE = { text: 14, high: 0.52 } as const;

/** Head, efficiency and power of every run over the flow: the sheet's own drawing, as wide as the panel. */
export function FlowCurves({ flowTest }: { readonly flowTest: FlowTestResult }) {
  const box = useRef<HTMLDivElement>(null);
  const width = useWidth(box);
  const drawing = useMemo(
    () =>
      flowChart(flowTest, {
        title: 'Curves of the flow test',
        description: flowLines(flowTest).join(' '),
        id: 'flow-curves',
        width,
        ...SIZE,
      }).markup,
    [flowTest, width],
  );
  // biome-ignore lint/security/noDangerouslySetInnerHtml: the engine writes it and escapes everything a person wrote
  return <div className="flow-screen" ref={box} dangerouslySetInnerHTML={{ __html: drawing }} />;
}
