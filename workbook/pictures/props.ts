import type { BlockCell, TraceAnswer } from '../../engine/index';

export interface PictureProps {
  readonly cell: BlockCell;
  /** Its outlines. */
  readonly trace: TraceAnswer;
}
