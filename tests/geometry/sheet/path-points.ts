/** The polylines of SVG path data that is made of M, L and Z alone. Throws on anything else. */
export function pointsOf(path: string): [x: number, y: number][][] {
  if (!/^(?:M[-\d. L]+Z?)*$/.test(path))
    throw new Error(`pointsOf: needs M, L and Z alone, got ${path.slice(0, 60)}`);
  return path
    .split('M')
    .slice(1)
    .map((line) =>
      line
        .replace('Z', '')
        .split('L')
        .map((point) => {
          const [x, y] = point.split(' ').map(Number);
          return [x, y];
        }),
    );
}

/** Area inside closed polylines by the shoelace sum. */
export function areaOf(lines: readonly (readonly [number, number])[][]): number {
  let area = 0;
  for (const line of lines) {
    let twice = 0;
    line.forEach(([x, y], i) => {
      const [nextX, nextY] = line[(i + 1) % line.length];
      twice += x * nextY - nextX * y;
    });
    area += Math.abs(twice) / 2;
  }
  return area;
}
