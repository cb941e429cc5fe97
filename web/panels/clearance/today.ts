/** The day by the clock of this device: `2026-12-01`. */
export function today(now: Date = new Date()): string {
  const two = (count: number): string => String(count).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
