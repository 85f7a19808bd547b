import { depthAt, outlineBays, panelOutline } from '../../physics/index';
import { edgeOf, type WingOutline } from './draw';

type Side = 'inboard' | 'outboard';

/** A rib that stands across a wing. */
export interface Rib {
  readonly title: string;
  readonly chord: number;
  /** Distance from the centreline toward the tip of each panel on which it stands, m; none at the root. */
  readonly at: readonly (readonly [side: Side, station: number])[];
}

/** Which ribs a person wants: so many evenly from the root to each tip with both, and one more at a station, outboard positive; NaN for none. */
export interface RibChoice {
  readonly count: number;
  readonly station: number;
}

/** A rib shorter than this can't be cut: an outline that ends in a point or a round tip has none there, m. */
export const LEAST_CHORD = 0.015;

/** From the centreline to the tip, m. */
export const spanOf = (w: WingOutline, side: Side): number => Math.max(...edgeOf(w, side).map(([, y]) => y));

/** Chord at a distance from the centreline: straight between root and tip, or what lies within the corners of the panel, m. */
export function chordAt(w: WingOutline, side: Side, station: number): number {
  const corners = side === 'inboard' ? w.inboardEdge : w.outboardEdge;
  if (corners) return depthAt(outlineBays(panelOutline(corners, w.rootChord)), station);
  const tip = side === 'inboard' ? w.inboardTipChord : w.outboardTipChord;
  return w.rootChord + (tip - w.rootChord) * (station / spanOf(w, side));
}

/** The ribs of a wing from the root out: those that both panels have alike once, the others panel by panel. */
export function ribsOf(w: WingOutline, { count, station }: RibChoice): Rib[] {
  const last = Math.max(1, Math.round(count) - 1);
  const evenly = (side: Side): Rib[] =>
    Array.from({ length: last }, (_, k): Rib => {
      const at = (spanOf(w, side) * (k + 1)) / last;
      return { title: titleOf(k + 1, last, side), chord: chordAt(w, side, at), at: [[side, at]] };
    });
  const [inboard, outboard] = [evenly('inboard'), evenly('outboard')];
  const alike = inboard.every(({ chord }, k) => Math.abs(chord - outboard[k]!.chord) < ALIKE);
  const both = inboard.map(
    ({ chord, at }, k): Rib => ({ title: titleOf(k + 1, last), chord, at: [...at, ...outboard[k]!.at] }),
  );
  const side = station < 0 ? 'inboard' : 'outboard';
  const typed: Rib = {
    title: 'Rib at the station that is typed',
    chord: chordAt(w, side, Math.abs(station)),
    at: [[side, Math.abs(station)]],
  };
  return [
    { title: 'Rib at the root', chord: w.rootChord, at: [] },
    ...(alike ? both : [...inboard, ...outboard]),
    ...(Math.abs(station) <= spanOf(w, side) ? [typed] : []),
  ].filter(({ chord }) => chord >= LEAST_CHORD);
}

/** Chords that differ by less are cut as one, m. */
const ALIKE = 1e-6;

function titleOf(k: number, last: number, side?: Side): string {
  if (k === last) return side ? `Rib at the ${side} tip` : 'Rib at the tips';
  return side ? `Rib ${k + 1} of ${last + 1}, ${side}` : `Rib ${k + 1} of ${last + 1}`;
}
