/** Waste is named two ways: on top of the need, as the job file has it, or as the share of what is mixed that is lost. Both in %. */

/** More than this the job takes for no waste, %. */
export const MOST_WASTE = 500;

/** @param waste  on top of the need, %. p on top of 100 is p of 100 + p. */
export function lostOf(waste: number): number {
  return (100 * waste) / (100 + waste);
}

/** What `lostOf` undoes, to 0.0001 %. @param lost  of what is mixed, %, below 100 */
export function wasteOf(lost: number): number {
  return Math.round((1e6 * lost) / (100 - lost)) / 1e4;
}
