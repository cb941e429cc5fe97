/** A number stays on one line with its unit, and a sign with its number. */
export function keptUnits(text: string): string {
  return text
    .replace(/(\d) (?=(?:mm|in|mL|m|m³\/h|kW|kWh|h|points|%|cm²|°C)(?![a-z]))/g, '$1\u00a0')
    .replace(/± (?=\d)/g, '±\u00a0');
}
