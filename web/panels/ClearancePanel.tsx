/** Whether impeller and plate run free of each other once filled and coated. */
export function ClearancePanel() {
  return <p className="quiet">Working out the figures</p>;
}
