/** Whether the pump came back: what was measured on the test bench before and after the repair. */
export function TestPanel() {
  return <p className="quiet">Working out the figures</p>;
}
