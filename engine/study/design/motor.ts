import type { BlockCell } from '../../sheet/document';

/** Whether an engine piece is an electric motor: by its kind, or known by a lap or its pull and called a motor. */
export const isMotor = ({ of, title }: Pick<BlockCell, 'of' | 'title'>): boolean =>
  of === 'electric' || /\bmotor\b/i.test(title);
