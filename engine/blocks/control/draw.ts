import { linkageAt, newLinkageState } from '../../physics/index';
import type { Columns, Shape } from '../block';
import { finiteShapes } from '../finite-shapes';
import type { windLinks } from '../flight/in-wind';
import { readLinkage } from './linkage';
import type { controlResults } from './results';

const state = newLinkageState();

/** Pushrod and horn of the scale drawing, with the bellcrank square. */
export function drawControl(m: Float64Array, f: Columns<typeof windLinks>, r: Columns<typeof controlResults>): Shape[] {
  if (Number.isNaN(m[r.up_travel]!)) return [];
  const linkage = readLinkage(m, r, f, 0);
  linkageAt(linkage, 0, state);
  const { pushrod } = linkage;
  const { crankX, crankY, hornX, hornZ } = state.rod;
  return finiteShapes([
    { view: 'plan', part: 'pushrod', points: [pushrod.pivotX, pushrod.pivotY, crankX, crankY, hornX, pushrod.hornY] },
    { view: 'side', part: 'pushrod', points: [crankX, pushrod.plane, hornX, hornZ] },
    { view: 'side', part: 'horn', points: [hornX, hornZ, pushrod.hingeX, pushrod.hingeZ] },
  ]);
}
