/** A figure as the sheet prints it: three or more digits that someone can weigh or measure, 142 or 47.3 or 0.85. */
export function figure(value: number): string {
  const size = Math.abs(value);
  // Limits sit at half a last digit, so that 99.96 reads 100 and not 100.0.
  const text = value.toFixed(size >= 99.95 ? 0 : size >= 9.995 ? 1 : 2);
  // What rounds to nothing has no sign: float dust of a difference would read -0.00.
  return text === '-0.00' ? '0.00' : text;
}

/** A length, mm, as a depth gauge shows it. */
export const gauge = (length: number): string => length.toFixed(2);

/** A chosen value as it was typed: no trailing zeros, no float dust. */
export const plain = (value: number): string => String(Number(value.toPrecision(10)));

/** `1 mix`, `3 mixes`. */
export function counted(count: number, one: string, more: string): string {
  return `${count} ${count === 1 ? one : more}`;
}

/** A time not to be passed, min, rounded down: a minute less is safe, a minute more is not. */
export function within(minutes: number): string {
  const shown = minutes < 10 ? Math.floor(minutes * 10 + 1e-6) / 10 : Math.floor(minutes + 1e-6);
  return String(shown);
}
