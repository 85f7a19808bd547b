/** Direction of flight seen from above, the usual one first; the slot holds the index. */
export const DIRECTIONS = ['counter-clockwise', 'clockwise'] as const;
/** Rotation of the propeller seen from behind, the usual one first. */
export const ROTATIONS = ['clockwise', 'counter-clockwise'] as const;
