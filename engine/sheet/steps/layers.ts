import { foldLayers, LAYER_STRIDE, STACK_NAMES, writeMassLayer, writeMaterialLayer } from '../../physics/index';
import { named } from '../named';
import type { FoldLayersSpec, LayerStepSpec, StepSpec } from '../specs';
import { type Ranged, tellBreach } from './range';

const AT_LEAST_NOTHING: readonly [number, number] = [0, Number.POSITIVE_INFINITY];

/** One layer of a stack: a thickness of a material, or a glue line or skin by its areal mass. */
export function layerStep({ cell, path, amount, material, layer }: LayerStepSpec): StepSpec {
  const of = path.slice(0, path.lastIndexOf('.'));
  const input: Ranged = { path, slot: amount, unit: material ? 'mm' : 'g/m²', range: AT_LEAST_NOTHING };
  const { density, modulus, bending } = material ?? {};
  const stuff = [density, modulus, bending].filter((slot) => slot !== undefined);
  return {
    step: {
      key: `layer ${path}: ${material ? `thickness${modulus === undefined ? '' : ' modulus'}${bending === undefined ? '' : ' bending'}` : 'areal mass'}`,
      kind: 'layer',
      cell,
      path,
      reads: [amount, ...stuff],
      writes: Array.from({ length: LAYER_STRIDE }, (_, k) => layer + k),
      reasons: ['range', 'no density'],
      bind(column, stride) {
        const [from, to] = [column(amount), column(layer)];
        const heavy = density === undefined ? -1 : column(density);
        const stiff = modulus === undefined ? -1 : column(modulus);
        const bends = bending === undefined ? -1 : column(bending);
        return (m, why, n) => {
          for (let i = 0; i < n; i++) {
            if (why[i] !== 0) continue;
            const value = m[from + i]!;
            if (!(value >= 0)) why[i] = 1;
            else if (heavy < 0) writeMassLayer(value, m, to + i, stride);
            else if (!(m[heavy + i]! >= 0)) why[i] = 2;
            else {
              const stretching = stiff < 0 ? Number.NaN : m[stiff + i]!;
              const own = bends < 0 || Number.isNaN(m[bends + i]!) ? stretching : m[bends + i]!;
              writeMaterialLayer(value, m[heavy + i]!, stretching, own, m, to + i, stride);
            }
          }
        };
      },
    },
    tell: (reason, read) =>
      reason === 0
        ? { path, message: tellBreach(input, read(amount)) }
        : {
            path,
            message: `${named(of)} has no weight: the density of its layer “${path.slice(of.length + 1).replaceAll('_', ' ')}” is not known. Take another material, or give that one a density.`,
          },
  };
}

/** Adds the layers of one option into a stack. */
export function foldLayersStep({ cell, path, layers, folds }: FoldLayersSpec): StepSpec {
  const writes = folds;
  return {
    step: {
      key: `stack ${path}: ${layers.length}`,
      kind: 'fold',
      cell,
      path,
      reads: layers.flatMap((layer) => Array.from({ length: LAYER_STRIDE }, (_, k) => layer + k)),
      writes,
      reasons: [],
      bind(column, stride) {
        const from = Int32Array.from(layers, column);
        const to = Int32Array.from(writes, column);
        const gathered = new Float64Array(layers.length * LAYER_STRIDE);
        const folded = new Float64Array(STACK_NAMES.length);
        return (m, why, n) => {
          for (let i = 0; i < n; i++) {
            if (why[i] !== 0) continue;
            for (let l = 0; l < from.length; l++) {
              for (let k = 0; k < LAYER_STRIDE; k++) gathered[l * LAYER_STRIDE + k] = m[from[l]! + k * stride + i]!;
            }
            foldLayers(gathered, layers.length, folded);
            for (let k = 0; k < to.length; k++) m[to[k]! + i] = folded[k]!;
          }
        };
      },
    },
    tell: () => ({ path, message: '' }),
  };
}
