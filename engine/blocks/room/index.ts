import { rearmostEngine, type SideBox, sideGap } from '../../physics/index';
import { block, type Columns, type Shape } from '../block';
import { bodyResults } from '../body/results';
import { engineResults } from '../engines/results';
import { finiteShapes } from '../finite-shapes';
import { typedOr } from '../measures';
import { wingResults } from '../wing/results';
import { roomCautions } from './cautions';
import { roomFields } from './fields';
import { roomResults } from './results';
import { roomTheory } from './theory';

const links = {
  engine: { link: 'engine', results: engineResults, doc: 'Where it stands, its size, and the rear of its bearers.' },
  body: { link: 'body', results: bodyResults, doc: 'Tank or pack that stands in the air.' },
  wing: { link: 'wing', results: wingResults, doc: 'Mean chord: the wing begins at its leading edge.' },
  tank: { link: 'tank', optional: true, doc: 'Size and place of the tank, unless typed.' },
} as const;

type Fields = Columns<typeof links> & Columns<typeof roomFields>;

/** Of the depth of a wing root in its mean chord, where none is typed (common practice, no source). */
const WING_DEPTH = 0.15;

const boxAt = (x: number, z: number, length: number, height: number): SideBox => ({
  front: x - length / 2,
  rear: x + length / 2,
  bottom: z - height / 2,
  top: z + height / 2,
});

interface Boxes {
  readonly engine: SideBox;
  readonly tank: SideBox;
  readonly wing: SideBox;
  readonly strap: SideBox;
}

/** All that stands along the body, seen from the side. */
function boxesOf(m: Float64Array, f: Fields, i: number): Boxes {
  const at = (column: number): number => m[column + i]!;
  const { engine, body, wing } = f;
  const chord = at(wing.mean_chord);
  const tankLength = typedOr(at(f.tank_length), at(body.tank_length));
  return {
    engine: boxAt(at(engine.station), at(engine.height), at(engine.engine_length), at(engine.engine_width)),
    // One without length isn't there.
    tank: boxAt(
      tankLength > 0 ? typedOr(at(f.tank_x), at(body.tank_x)) : Number.NaN,
      typedOr(at(f.tank_z), at(body.tank_z)),
      tankLength,
      typedOr(at(f.tank_height), at(body.tank_height)),
    ),
    wing: boxAt(chord / 2, at(f.wing_z), chord, typedOr(at(f.wing_depth), WING_DEPTH * chord)),
    strap: boxAt(at(f.strap_x), at(f.strap_z), at(f.strap_length), at(f.strap_depth)),
  };
}

/** Room along the body: what stands where between engine and wing, and what touches what. */
export const room = block({
  kind: 'room',
  title: 'Room along the body',
  doc: 'What stands along the body seen from the side: engine with its bearers, what it needs behind it, shutoff, tank or pack, wing and strap. It says what touches what, and how far aft the engine can go.',
  line: ['least_gap', 'aft'],
  lineTitled: true,
  fields: { ...links, ...roomFields },
  results: roomResults,
  reasons: {},
  theory: roomTheory,
  cautions: roomCautions,
  run(m, f, r, i) {
    const at = (column: number): number => m[column + i]!;
    const { engine, tank, wing, strap } = boxesOf(m, f, i);
    const needed = at(f.behind) + at(f.shutoff_length);
    const level = tank.front < tank.rear && Math.max(tank.bottom - engine.top, engine.bottom - tank.top) < 0;
    const behind = level ? tank.front : Number.POSITIVE_INFINITY;
    const rearmost = rearmostEngine(at(f.engine.engine_length), at(f.engine.bearer_rear), behind, needed);
    m[r.spare + i] = level ? tank.front - engine.rear - needed : Number.NaN;
    m[r.rearmost + i] = rearmost;
    m[r.aft + i] = rearmost - at(f.engine.station);
    const gaps = [
      sideGap(engine, tank),
      sideGap(engine, wing),
      sideGap(tank, wing),
      sideGap(engine, strap),
      sideGap(tank, strap),
    ];
    for (const [k, name] of GAPS.entries()) m[r[name] + i] = gaps[k]!;
    let least = WITH_WING;
    for (const [k, gap] of gaps.entries()) if (gap < gaps[least]!) least = k;
    m[r.least_gap + i] = gaps[least]!;
    m[r.least_pair + i] = least;
    return undefined;
  },
  draw(m, f, r) {
    const { engine, tank, strap } = boxesOf(m, f, 0);
    const { engine_length: length } = f.engine;
    const rearmost = boxAt(m[r.rearmost]!, m[f.engine.height]!, m[length]!, engine.top - engine.bottom);
    const valve: SideBox = {
      front: tank.front - m[f.shutoff_length]!,
      rear: tank.front,
      bottom: engine.bottom / 2 + engine.top / 2 - VALVE / 2,
      top: engine.bottom / 2 + engine.top / 2 + VALVE / 2,
    };
    return finiteShapes([
      outline('engine_rearmost', rearmost),
      ...(m[f.shutoff_length]! > 0 ? [outline('shutoff', valve)] : []),
      outline('strap', strap),
    ]);
  },
});

/** The gap that every design has. */
const WITH_WING = 1;
const GAPS = ['engine_tank', 'engine_wing', 'tank_wing', 'engine_strap', 'tank_strap'] as const;
/** Depth in which a shutoff is drawn, m. */
const VALVE = 0.008;

const outline = (part: string, { front, rear, bottom, top }: SideBox): Shape => ({
  view: 'side',
  part,
  closed: true,
  points: [front, bottom, rear, bottom, rear, top, front, top],
});
