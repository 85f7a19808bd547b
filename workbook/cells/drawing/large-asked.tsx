import type { DrawingCell } from '../../../engine/index';
import { useFetched } from '../../drawing/index';
import { useSheet } from '../../store/context';
import { largeAsked } from '../../store/large-drawing';
import type { LargeDrawing } from './large/index';

/** The drawing that is shown large, whatever window the sheet around it has; fetched when it is asked for first. */
export function LargeAsked() {
  const id = largeAsked.value;
  const cell = useSheet().cells.value.find((each): each is DrawingCell => each.kind === 'drawing' && each.id === id);
  return cell ? <Here cell={cell} /> : null;
}

function Here({ cell }: { cell: DrawingCell }) {
  const Dialog = useFetched(
    () => largeDrawing,
    async () => {
      largeDrawing = (await import('./large/index')).LargeDrawing;
    },
  );
  return Dialog ? (
    <Dialog
      cell={cell}
      onClose={() => {
        largeAsked.value = undefined;
      }}
    />
  ) : null;
}
let largeDrawing: typeof LargeDrawing | undefined;
