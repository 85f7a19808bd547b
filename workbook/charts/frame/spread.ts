/** A label that wants to stand at `at` and takes `size` along one direction. */
export interface Wish {
  readonly at: number;
  readonly size: number;
}

interface Block {
  first: number;
  /** Sum and count of the wished positions, each less the room of the labels before it. */
  sum: number;
  count: number;
}

/**
 * Middles of labels along a line so that none overlaps another and the squares of their moves are least, kept between
 * `from` and `to`. Neighbours that would overlap are joined into blocks which stand at the mean of their wishes
 * (least-squares monotone fit by pooling neighbours).
 */
export function spread(wishes: readonly Wish[], from: number, to: number): number[] {
  const order = wishes.map((_, k) => k).sort((a, b) => wishes[a]!.at - wishes[b]!.at || a - b);
  const offset: number[] = [];
  let room = 0;
  for (const k of order) {
    offset.push(room + wishes[k]!.size / 2);
    room += wishes[k]!.size;
  }
  const blocks: Block[] = [];
  for (const [n, k] of order.entries()) {
    let block: Block = { first: n, sum: wishes[k]!.at - offset[n]!, count: 1 };
    for (let last = blocks.at(-1); last && last.sum / last.count >= block.sum / block.count; last = blocks.at(-1)) {
      block = { first: last.first, sum: last.sum + block.sum, count: last.count + block.count };
      blocks.pop();
    }
    blocks.push(block);
  }
  const middles: number[] = Array.from({ length: wishes.length });
  for (const [b, block] of blocks.entries()) {
    const start = Math.min(Math.max(block.sum / block.count, from), to - room);
    const end = blocks[b + 1]?.first ?? order.length;
    for (let n = block.first; n < end; n++) middles[order[n]!] = start + offset[n]!;
  }
  return middles;
}
