import { bladeShapes } from '../../library/index';
import { alongBlade, bladeAngle, type PreparedPropeller, preparePropeller } from '../../physics/index';
import type { Columns } from '../block';
import { type propellerFields, TYPED_STATIONS } from './fields';

type Fields = Columns<typeof propellerFields>;

/** Blade of the fields: the shape at marked size, scaled and turned to what was typed at stations, between those. */
export function readBlade(m: Float64Array, f: Fields, i: number): PreparedPropeller {
  const shape = bladeShapes[m[f.shape + i]!]!;
  const radius = m[f.diameter + i]! / 2;
  const pitch = m[f.pitch + i]!;
  const angleOfShape = (share: number, pitchShare: number): number => bladeAngle(pitch * pitchShare, share * radius);
  const chords = [f.chord_30, f.chord_45, f.chord_60, f.chord_75, f.chord_90].map((column) => m[column + i]!);
  const angles = [f.angle_30, f.angle_45, f.angle_60, f.angle_75, f.angle_90].map((column) => m[column + i]!);
  const scales = fill(
    chords.map((chord, k) => chord / (radius * alongBlade(shape.radiusShare, shape.chordShare, TYPED_STATIONS[k]!))),
    1,
  );
  const turns = fill(
    angles.map((angle, k) => {
      const at = TYPED_STATIONS[k]!;
      return angle - angleOfShape(at, alongBlade(shape.radiusShare, shape.pitchShare, at));
    }),
    0,
  );
  return preparePropeller({
    blades: m[f.blades + i]!,
    diameter: 2 * radius,
    radiusShare: shape.radiusShare,
    chordShare: shape.chordShare.map((chord, k) => chord * alongBlade(scales.at, scales.values, shape.radiusShare[k]!)),
    angle: shape.pitchShare.map((share, k) => {
      const at = shape.radiusShare[k]!;
      return angleOfShape(at, share) + alongBlade(turns.at, turns.values, at);
    }),
  });
}

/** The stations at which something was typed; where nothing was, one with the neutral value. */
function fill(values: readonly number[], neutral: number): { at: number[]; values: number[] } {
  const kept = TYPED_STATIONS.map((at, k) => ({ at, value: values[k]! })).filter((row) => !Number.isNaN(row.value));
  if (kept.length === 0) return { at: [0.5], values: [neutral] };
  return { at: kept.map((row) => row.at), values: kept.map((row) => row.value) };
}
