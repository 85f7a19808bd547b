import type { ComponentType, JSX } from 'preact';
import type { BlockCell } from '../../engine/index';
import { SaveFigure } from '../controls/save-figure';
import { useFetched } from '../drawing/index';
import { useSheet } from '../store/context';
import { useOnScreen } from '../store/on-screen';
import { type PictureKind, pictureKinds } from './kinds';
import type { PictureProps } from './props';

const here = new Map<PictureKind, ComponentType<PictureProps>>();

/** Brings what draws the picture of a kind of block, and tells from which trace it is drawn; undefined where it has none. */
export function fetchPicture(of: string): string | undefined {
  const kind = pictureKinds[of];
  if (kind && !here.has(kind)) void fetched(kind);
  return kind?.trace;
}

async function fetched(kind: PictureKind): Promise<void> {
  here.set(kind, await kind.component());
}

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
  const Drawn = useFetched(
    () => here.get(kind),
    () => fetched(kind),
    kind,
  );
  const trace = sheet.traces.of(path).value;
  return (
    <div class="block-picture" ref={place} aria-busy={!(trace && Drawn)}>
      {!(trace && Drawn) ? null : trace.present.length === 0 ? (
        // Why there is none is said above, at the block's own fault.
        <p class="aside">{trace.message}</p>
      ) : (
        <>
          <Drawn cell={cell} trace={trace} />
          <SaveFigure title={cell.title} draw={() => <Drawn cell={cell} trace={trace} />} />
        </>
      )}
    </div>
  );
}
