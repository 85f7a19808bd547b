import type { BlockCell, TraceAnswer } from '../../engine/index';

export interface PictureProps {
  readonly cell: BlockCell;
  /** What it is drawn from. */
  readonly trace: TraceAnswer;
}
