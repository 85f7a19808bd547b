/** Outline of a convex body seen from one side: the hull of its corners. Source: A. M. Andrew, Information Processing Letters 9 (1979), monotone chain. */
export function outlineOf(corners: readonly [number, number][]): [number, number][] {
  const places = [...corners].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const turn = (o: [number, number], a: [number, number], b: [number, number]): number =>
    (a[0] - o[0]) * (b[1] - o[1]) - (a[1] - o[1]) * (b[0] - o[0]);
  const half = (list: readonly [number, number][]): [number, number][] => {
    const chain: [number, number][] = [];
    for (const p of list) {
      while (chain.length > 1 && turn(chain.at(-2)!, chain.at(-1)!, p) <= 0) chain.pop();
      chain.push(p);
    }
    return chain.slice(0, -1);
  };
  return [...half(places), ...half([...places].reverse())];
}
