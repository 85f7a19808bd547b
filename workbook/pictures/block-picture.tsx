import type { ComponentType, JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { BlockCell } from '../../engine/index';
import { useSheet } from '../store/context';
import { useOnScreen } from '../store/on-screen';
import { type PictureKind, pictureKinds } from './kinds';
import type { PictureProps } from './props';

/** The picture of a block, where its kind has one. */
export function BlockPicture({ cell }: { cell: BlockCell }): JSX.Element | null {
  const kind = pictureKinds[cell.of];
  return kind ? <Watched cell={cell} kind={kind} /> : null;
}

/** Its outlines are computed while it is on the screen. */
function Watched({ cell, kind }: { cell: BlockCell; kind: PictureKind }): JSX.Element {
  const sheet = useSheet();
  const path = `${cell.name}.${kind.trace}`;
  const place = useOnScreen(() => sheet.traces.watch(path), path);
  const [Drawn, setDrawn] = useState<ComponentType<PictureProps> | undefined>(undefined);
  useEffect(() => {
    void kind.component().then((component) => setDrawn(() => component));
  }, [kind]);
  const trace = sheet.traces.of(path).value;
  return (
    <div class="block-picture" ref={place}>
      {!(trace && Drawn) ? null : trace.present.length === 0 ? (
        // Why there is none is said above, at the block's own fault.
        <p class="aside">{trace.message}</p>
      ) : (
        <Drawn cell={cell} trace={trace} />
      )}
    </div>
  );
}
