/** A list of sentences, and the comparisons that write them. */
export function complaints() {
  const list = [];
  const say = (sentence) => list.push(sentence);
  return {
    list,
    say,
    that: (holds, sentence) => holds || say(sentence),
    near: (what, found, right, most = 1e-6) =>
      Math.abs(found - right) <= most * Math.max(1, Math.abs(right)) ||
      say(`${what} is ${found}, should be ${right}`),
  };
}
