import type { Layer } from '../document';
import { named } from '../named';
import type { Slot } from '../program';
import type { Builder } from '../specs';
import { densityOf } from './material';

/** What a stack gives, in the order in which its layers are folded. */
export const STACK_COLUMNS = [
  {
    name: 'areal_mass',
    title: 'Areal mass',
    symbol: 'w',
    unit: 'g/m²',
    tradeUnit: 'oz/yd²',
    doc: 'All layers and glue lines together.',
  },
  { name: 'thickness', title: 'Thickness', symbol: 't', unit: 'mm', tradeUnit: 'in', doc: 'All layers together.' },
  {
    name: 'stiffness',
    title: 'Bending stiffness per width',
    symbol: 'D',
    unit: 'N·m',
    doc: 'EI of a strip of unit width along the grain; blank where a modulus is not known.',
    detail: true,
  },
] as const;

/** More than any stack has. */
const MOST_LAYERS = 200;

/** Lays the layers of one option and their fold; gives the slots of its numbers by name. */
export function layStack(
  cell: string,
  path: string,
  layers: readonly Layer[],
  builder: Builder,
): ReadonlyMap<string, Slot> {
  const { trade } = builder;
  const rows = layers
    .slice(0, MOST_LAYERS)
    .filter((layer) => builder.claim(`${path}.${layer.name}`, cell))
    .map((layer) => layLayer(cell, path, layer, builder));
  const folds = new Map<string, Slot>();
  for (const { name, ...column } of STACK_COLUMNS) {
    const own = `${path}.${name}`;
    const slot = builder.slots(own);
    folds.set(name, slot);
    if (!builder.claim(own, cell)) continue;
    const dimension = builder.unit(column.unit, own, cell)!;
    builder.value({ ...column, cell, path: own, slot, dimension, kind: 'choice', detail: true });
  }
  builder.later(() => {
    const writes = [...folds.values()];
    const at = { cell, path, kind: 'fold' as const, writes };
    if (rows.length === 0) builder.broken(at, { message: `${named(path)} has no layers. Give it at least one.` });
    else if (layers.length > MOST_LAYERS) builder.broken(at, { message: tooMany(path, layers.length) });
    else builder.step(trade.foldLayers({ cell, path, layers: rows, folds: writes }));
  });
  return folds;
}

const tooMany = (path: string, count: number): string =>
  `${named(path)} has ${count} layers. At most ${MOST_LAYERS} are allowed: make several thin ones into one.`;

function layLayer(cell: string, of: string, layer: Layer, builder: Builder): Slot {
  const path = `${of}.${layer.name}`;
  const { trade } = builder;
  const stuff = layer.material.trim();
  const unit = stuff === '' ? 'g/m²' : 'mm';
  const amount = builder.text({
    cell,
    path,
    text: layer.text,
    kind: 'choice',
    title: `${named(of)}: ${stuff === '' ? 'areal mass' : 'thickness'} of ${layer.name.replaceAll('_', ' ')}`,
    unit,
    wants: { dimension: builder.unit(unit, path, cell)! },
    range: [0, Number.POSITIVE_INFINITY],
    detail: true,
  });
  const row = builder.slots(`${path}#layer`, trade.layerStride);
  builder.later(() => {
    if (stuff === '') {
      builder.step(trade.layer({ cell, path, amount, layer: row }));
      return;
    }
    const material = densityOf(of, stuff, builder);
    if (material.fault !== undefined) {
      const writes = Array.from({ length: trade.layerStride }, (_, k) => row + k);
      builder.broken({ cell, path: `${path}.material`, kind: 'layer', writes }, { message: material.fault });
    } else {
      const modulus = builder.find(`${stuff}.modulus`)?.slot;
      const bending = builder.find(`${stuff}.bending_modulus`)?.slot;
      const given = { density: material.slot, modulus, bending };
      builder.step(trade.layer({ cell, path, amount, material: given, layer: row }));
    }
  });
  return row;
}
