import {
  finishMass,
  newPart,
  PART_STRIDE,
  rodMass,
  runMass,
  sectionVolume,
  sheetMass,
  solidMass,
  stackMass,
  stripVolume,
  taperedVolume,
  triangleVolume,
  tubeVolume,
  writePart,
} from '../../physics/index';
import { partFields } from '../cells/part-fields';
import type { PartShape } from '../document';
import { named } from '../named';
import type { PartStepSpec, StepSpec } from '../specs';
import { firstBreach, placeRanges, type Ranged, tellBreach } from './range';

/** Puts the mass of the bare part at `m[to]`, from the numbers of its shape, each a column. To give it back would cost heap for every design. */
type Estimate = (m: Float64Array, i: number, to: number) => void;

const ESTIMATES: Readonly<Record<PartShape, (at: (input: string) => number) => Estimate>> = {
  point(at) {
    const mass = at('mass');
    return (m, i, to) => {
      m[to] = m[mass + i]!;
    };
  },
  sheet(at) {
    const [area, thickness, density] = [at('area'), at('thickness'), at('density')];
    return (m, i, to) => {
      m[to] = sheetMass(m[area + i]!, m[thickness + i]!, m[density + i]!);
    };
  },
  stack(at) {
    const [area, arealMass] = [at('area'), at('areal_mass')];
    return (m, i, to) => {
      m[to] = stackMass(m[area + i]!, m[arealMass + i]!);
    };
  },
  rod(at) {
    const [length, diameter, density] = [at('length'), at('diameter'), at('density')];
    return (m, i, to) => {
      m[to] = rodMass(m[length + i]!, m[diameter + i]!, m[density + i]!);
    };
  },
  solid(at) {
    const [volume, density] = [at('volume'), at('density')];
    return (m, i, to) => {
      m[to] = solidMass(m[volume + i]!, m[density + i]!);
    };
  },
  strip(at) {
    const [length, width, thickness, density] = [at('length'), at('width'), at('thickness'), at('density')];
    return (m, i, to) => {
      m[to] = solidMass(stripVolume(m[length + i]!, m[width + i]!, m[thickness + i]!), m[density + i]!);
    };
  },
  tube(at) {
    const [length, diameter, wall, density] = [at('length'), at('diameter'), at('wall'), at('density')];
    return (m, i, to) => {
      m[to] = solidMass(tubeVolume(m[length + i]!, m[diameter + i]!, m[wall + i]!), m[density + i]!);
    };
  },
  tapered(at) {
    const [length, width, widthEnd] = [at('length'), at('width'), at('width_end')];
    const [thickness, thicknessEnd, density] = [at('thickness'), at('thickness_end'), at('density')];
    return (m, i, to) => {
      const v = taperedVolume(m[length + i]!, m[width + i]!, m[widthEnd + i]!, m[thickness + i]!, m[thicknessEnd + i]!);
      m[to] = solidMass(v, m[density + i]!);
    };
  },
  triangle(at) {
    const [length, width, height, density] = [at('length'), at('width'), at('height'), at('density')];
    return (m, i, to) => {
      m[to] = solidMass(triangleVolume(m[length + i]!, m[width + i]!, m[height + i]!), m[density + i]!);
    };
  },
  ribs: (at) => ofSection(at, 'thickness'),
  core: (at) => ofSection(at, 'length'),
  run(at) {
    const [length, linearMass] = [at('length'), at('linear_mass')];
    return (m, i, to) => {
      m[to] = runMass(m[length + i]!, m[linearMass + i]!);
    };
  },
};

/** A rib as deep as its sheet, or a core as long as its panel. */
function ofSection(at: (input: string) => number, depth: string): Estimate {
  const [length, chord, tipChord] = [at(depth), at('chord'), at('tip_chord')];
  const [ratio, cutAway, density] = [at('section_thickness'), at('cut_away'), at('density')];
  return (m, i, to) => {
    const v = sectionVolume(m[length + i]!, m[chord + i]!, m[tipChord + i]!, m[ratio + i]!, m[cutAway + i]!);
    m[to] = solidMass(v, m[density + i]!);
  };
}

/** Adds the mass of the coats at `m[to]`, and counts as many as there are. */
function finishedOf(at: (input: string) => number): Estimate {
  const [area, coat, count] = [at('coats_area'), at('coat'), at('count')];
  return (m, i, to) => {
    m[to] = m[count + i]! * (m[to]! + finishMass(m[area + i]!, m[coat + i]!));
  };
}

/** One part row: its mass with finish, the scale's word before the estimate's, and its numbers for the fold. */
export function partStep(spec: PartStepSpec): StepSpec {
  const { cell, path, shape, inputs, row, off, estimate, difference, weighedAs } = spec;
  const ranged = rangedInputs(spec);
  const unusable = ranged.length;
  const counting = typeof weighedAs === 'object' ? weighedAs : undefined;
  return {
    step: {
      key: `part ${path}: ${shape}${told(weighedAs)}`,
      kind: 'part',
      cell,
      path,
      reads: [...inputs.values(), off, off + 1, off + 2, off + 3, ...(counting ? [counting.picked] : [])],
      writes: [...Array.from({ length: PART_STRIDE }, (_, k) => row + k), estimate, difference],
      reasons: [...ranged.map((input) => `range of ${input.path}`), 'no mass'],
      bind(column, stride) {
        const at = (input: string): number => column(inputs.get(input)!);
        const bare = ESTIMATES[shape](at);
        const { columns, lows, highs } = placeRanges(ranged, column);
        const [out, written, less] = [column(row), column(estimate), column(difference)];
        const [offMass, offX, offY, offZ] = [column(off), column(off + 1), column(off + 2), column(off + 3)];
        const [x, y, z, weighed] = [at('x'), at('y'), at('z'), at('weighed')];
        const [sizeX, sizeY, sizeZ] = [at('size_x'), at('size_y'), at('size_z')];
        const finished = finishedOf(at);
        const [massTolerance, stationTolerance] = [at('mass_tolerance'), at('station_tolerance')];
        const picked = counting ? column(counting.picked) : -1;
        const option = counting?.option ?? 0;
        const then = whenWeighed(spec, column);
        const part = newPart();
        return (m, why, n) => {
          for (let i = 0; i < n; i++) {
            if (why[i] !== 0) continue;
            const breach = firstBreach(m, columns, lows, highs, i);
            if (breach >= 0) {
              why[i] = 1 + breach;
              continue;
            }
            bare(m, i, written + i);
            finished(m, i, written + i);
            const mass = m[written + i]!;
            if (Number.isNaN(mass)) {
              why[i] = 1 + unusable;
              continue;
            }
            const remade =
              weighedAs === 'something else' || (picked >= 0 && m[picked + i] !== option) || differs(then, m, i);
            m[less + i] = m[weighed + i]! - mass;
            part.estimate = mass + m[offMass + i]!;
            part.weighed = m[weighed + i]! + m[offMass + i]!;
            if (remade) m[less + i] = part.weighed = Number.NaN;
            part.x = m[x + i]! + m[offX + i]!;
            part.y = m[y + i]! + m[offY + i]!;
            part.z = m[z + i]! + m[offZ + i]!;
            part.sizeX = m[sizeX + i]!;
            part.sizeY = m[sizeY + i]!;
            part.sizeZ = m[sizeZ + i]!;
            part.massTolerance = m[massTolerance + i]!;
            part.stationTolerance = m[stationTolerance + i]!;
            writePart(part, m, out + i, stride);
          }
        };
      },
    },
    tell(reason, read) {
      const input = ranged[reason];
      if (input) return { path: input.path, message: tellBreach(input, read(input.slot)) };
      const stuff = LACKING[shape] ?? 'density of its material';
      return {
        path,
        message: `${named(path)} has no mass: the ${stuff} is not known. Name another, or give that one a value.`,
      };
    },
  };
}

/** Columns of what a part is now and was when it was weighed, in turn. */
function whenWeighed({ shape, inputs }: PartStepSpec, column: (slot: number) => number): readonly number[] {
  return partFields(shape).flatMap(({ name, asWeighed }) => {
    const [now, then] = [inputs.get(asWeighed ?? ''), inputs.get(name)];
    return asWeighed === undefined || now === undefined || then === undefined ? [] : [column(now), column(then)];
  });
}

/** Nothing that is written differs by so little. */
const SAME = 1e-6;

function differs(columns: readonly number[], m: Float64Array, i: number): boolean {
  for (let k = 0; k < columns.length; k += 2) {
    const [now, then] = [m[columns[k]! + i]!, m[columns[k + 1]! + i]!];
    // What nobody has written differs from nothing.
    if (Math.abs(now - then) > SAME * Math.abs(then)) return true;
  }
  return false;
}

const told = (weighedAs: PartStepSpec['weighedAs']): string =>
  typeof weighedAs === 'object'
    ? `, weighed as option ${weighedAs.option}`
    : weighedAs
      ? ', weighed as something else'
      : '';

/** What isn't known where a part has no mass, but for the density of a material. */
const LACKING: Partial<Record<PartShape, string>> = {
  stack: 'areal mass of its stack',
  run: 'mass per length of its wire',
};

/** Stuff that a name stands for may weigh nothing, but never less. */
const AT_LEAST_NOTHING: readonly [number, number] = [0, Number.POSITIVE_INFINITY];

function rangedInputs({ path, shape, inputs }: PartStepSpec): Ranged[] {
  const ranged: Ranged[] = [];
  for (const { name, range, unit } of partFields(shape)) {
    const slot = inputs.get(name);
    if (range && slot !== undefined && Number.isFinite(range[0])) {
      ranged.push({ path: `${path}.${name}`, slot, unit, range });
    }
  }
  const density = inputs.get('density');
  if (density !== undefined) {
    const words = `The density of what ${named(path)} is made of`;
    ranged.push({ path: `${path}.material`, words, slot: density, unit: 'kg/m³', range: AT_LEAST_NOTHING });
  }
  const arealMass = inputs.get('areal_mass');
  if (arealMass !== undefined) {
    const words = `The areal mass of what ${named(path)} is made of`;
    ranged.push({ path: `${path}.stack`, words, slot: arealMass, unit: 'g/m²', range: AT_LEAST_NOTHING });
  }
  const linearMass = inputs.get('linear_mass');
  if (linearMass !== undefined) {
    const words = `The mass per length of what ${named(path)} is made of`;
    ranged.push({ path: `${path}.wire`, words, slot: linearMass, unit: 'g/m', range: AT_LEAST_NOTHING });
  }
  return ranged;
}
