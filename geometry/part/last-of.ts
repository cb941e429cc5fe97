/** Keeps the last answer: cells of a row all ask for the same height. */
export function lastOf<T>(work: (value: number) => T): (value: number) => T {
  let asked = Number.NaN;
  let answer: T;
  return (value) => {
    if (value !== asked) answer = work(value);
    asked = value;
    return answer;
  };
}
