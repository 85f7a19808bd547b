/**
 * Rings and order among steps. `needs[k]` lists the steps whose values step k reads.
 */
export type Needs = readonly (readonly number[])[];

/** Groups of steps that need each other (strongly connected, by Tarjan's algorithm); a step alone only if it needs itself. */
export function ringGroups(needs: Needs): number[][] {
  const UNSEEN = -1;
  const index = new Int32Array(needs.length).fill(UNSEEN);
  const lowest = new Int32Array(needs.length);
  const onStack = new Uint8Array(needs.length);
  const stack: number[] = [];
  const groups: number[][] = [];
  let next = 0;

  function visit(k: number): void {
    index[k] = lowest[k] = next++;
    stack.push(k);
    onStack[k] = 1;
    for (const other of needs[k]!) {
      if (index[other] === UNSEEN) {
        visit(other);
        lowest[k] = Math.min(lowest[k]!, lowest[other]!);
      } else if (onStack[other]) lowest[k] = Math.min(lowest[k]!, index[other]!);
    }
    if (lowest[k] !== index[k]) return;
    const group: number[] = [];
    let member: number;
    do {
      member = stack.pop()!;
      onStack[member] = 0;
      group.push(member);
    } while (member !== k);
    if (group.length > 1 || needs[k]!.includes(k)) groups.push(group);
  }

  for (let k = 0; k < needs.length; k++) if (index[k] === UNSEEN) visit(k);
  return groups;
}

/** The shortest way from a step back to itself, along what each needs: [k, …], without the return. Breadth first. */
export function shortestRing(k: number, needs: Needs): number[] {
  const from = new Map<number, number>();
  const queue = [k];
  for (const at of queue) {
    for (const other of needs[at]!) {
      if (other === k) return wayTo(at, k, from);
      if (from.has(other)) continue;
      from.set(other, at);
      queue.push(other);
    }
  }
  return [];
}

function wayTo(end: number, start: number, from: ReadonlyMap<number, number>): number[] {
  const way = [end];
  for (let at = end; at !== start; ) {
    at = from.get(at)!;
    way.unshift(at);
  }
  return way;
}

/** An order in which every step comes after what it needs; otherwise as given. Needs must have no rings. */
export function computingOrder(needs: Needs): number[] {
  const placed = new Uint8Array(needs.length);
  const order: number[] = [];
  function place(k: number): void {
    if (placed[k]) return;
    placed[k] = 1;
    for (const other of needs[k]!) place(other);
    order.push(k);
  }
  for (let k = 0; k < needs.length; k++) place(k);
  return order;
}
