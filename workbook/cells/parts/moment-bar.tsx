import { useSheet } from '../../store/context';

/** A part's moment about the CG as a bar: to the left it makes the nose heavy, to the right the tail. */
export function MomentBar({ path, most }: { path: string; most: number }) {
  const sheet = useSheet();
  const share = sheet.value(`${path}.moment_share`);
  const length = Number.isNaN(share) ? 0 : (50 * Math.min(1, Math.abs(share) / most)).toFixed(1);
  const side = share < 0 ? 'nose' : 'tail';
  return (
    <span class="moment">
      <span class="moment-room" aria-hidden="true">
        <span class={`moment-bar ${side}`} style={{ width: `${length}%` }} />
      </span>
      <span class="moment-share" data-value={`${path}.moment_share`}>
        {sheet.shown(`${path}.moment_share`)}
      </span>
    </span>
  );
}

/** Bars are drawn against the longest, rounded up so that they don't all change when one does. */
export function longestBar(shares: readonly number[]): number {
  const longest = Math.max(0, ...shares.filter(Number.isFinite).map(Math.abs));
  return Math.max(0.1, Math.ceil(longest * 10) / 10);
}
