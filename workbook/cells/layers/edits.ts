import type { ChoiceCell, ChoiceOption, Layer, UnitSet } from '../../../engine/index';

const changeOption = (
  cell: ChoiceCell,
  option: string,
  change: (layers: readonly Layer[]) => readonly Layer[],
): ChoiceCell => ({
  ...cell,
  options: cell.options.map((each: ChoiceOption) =>
    each.name === option ? { ...each, layers: change(each.layers ?? []) } : each,
  ),
});

/** A layer more, on the last face. */
export const withLayer = (cell: ChoiceCell, option: string, layer: Layer): ChoiceCell =>
  changeOption(cell, option, (layers) => [...layers, layer]);

export const withoutLayer = (cell: ChoiceCell, option: string, name: string): ChoiceCell =>
  changeOption(cell, option, (layers) => layers.filter((layer) => layer.name !== name));

/** Moves a layer by places, as far as the faces. */
export const movedLayer = (cell: ChoiceCell, option: string, name: string, by: number): ChoiceCell =>
  changeOption(cell, option, (layers) => {
    const at = layers.findIndex((layer) => layer.name === name);
    const to = Math.max(0, Math.min(layers.length - 1, at + by));
    return at < 0 || at === to ? layers : layers.toSpliced(at, 1).toSpliced(to, 0, layers[at]!);
  });

/** What a layer says first: a sheet by its thickness, a glue line or a skin by its mass per area. */
export const firstThickness = (set: UnitSet): string => (set === 'metric' ? '1 mm' : '1/32 in');
const firstArealMass = (set: UnitSet): string => (set === 'metric' ? '50 g/m²' : '1.5 oz/yd²');

/**
 * The texts that make a layer of another material. A glue line has no thickness and a sheet no mass per area: going from one to the
 * other its number can't stay.
 */
export function remade(
  path: string,
  layer: Layer,
  material: string,
  set: UnitSet,
): readonly (readonly [string, string])[] {
  const made: readonly [string, string] = [`${path}.material`, material];
  if ((layer.material === '') === (material === '')) return [made];
  return [made, [path, material === '' ? firstArealMass(set) : firstThickness(set)]];
}
