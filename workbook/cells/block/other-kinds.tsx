import type { BlockCell, BlockDescription } from '../../../engine/index';
import { along } from '../../controls/along';
import { useSheet } from '../../store/context';

/** The way to another kind of the same: an engine by a timed lap, by its data, an electric motor. */
export function OtherKinds({ cell, block }: { cell: BlockCell; block: BlockDescription }) {
  const sheet = useSheet();
  const others = (sheet.offered.value?.blocks ?? []).filter(
    ({ role, kind }) => role === block.role && kind !== block.kind,
  );
  if (others.length === 0) return null;
  return (
    <button
      type="button"
      {...along()}
      class="word quiet"
      aria-haspopup="dialog"
      onClick={() => {
        sheet.swapping.value = cell.id;
      }}
    >
      Put another kind in its place<span class="unseen"> for {cell.title}</span>
    </button>
  );
}
