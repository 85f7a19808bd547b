import * as v from 'valibot';
import { renameInFormula } from '../../formula/index';
import type { ChoiceCell, ChoiceOption } from '../document';
import { allOptions, named } from '../named';
import type { Slot } from '../program';
import type { Builder, ValueSpec } from '../specs';
import { choiceStep } from '../steps/choice';
import { layLibraryChoice } from './choice-library';
import { baseEntries, textsEntry, unitEntry } from './entries';
import type { CellKindOf, Rewrite, Text } from './kind';
import { mapFields, mapRows, mapTexts, withRow, withText } from './rows';
import { layStack, STACK_COLUMNS } from './stack';

/** More than any list of things to choose from has. */
const MOST_OPTIONS = 500;

const layerSchema = v.strictObject({ name: v.string(), material: v.string(), text: v.string() });
const optionSchema = v.strictObject({
  name: v.string(),
  title: v.string(),
  pattern: v.picklist(['grain', 'ply', 'faced', 'foam', 'weave', 'plain']),
  layers: v.optional(v.array(layerSchema)),
  values: v.optional(textsEntry),
});

/** One of a list: a stack of layers, a set of numbers, or a bare name. */
export const choiceCell: CellKindOf<ChoiceCell> = {
  kind: 'choice',
  schema: v.strictObject({
    ...baseEntries('choice'),
    of: v.picklist(['stack', 'numbers', 'library']),
    table: v.optional(v.string()),
    columns: v.array(v.strictObject({ name: v.string(), unit: unitEntry, title: v.string() })),
    options: v.array(optionSchema),
    text: v.string(),
  }),
  owns: (cell) => [
    cell.name,
    // The rows of a table are named where they are; a choice among them only says their names.
    ...(cell.of === 'library' ? [] : cell.options).flatMap((option) => {
      const path = `${cell.name}.${option.name}`;
      return [path, ...(option.layers ?? []).map((layer) => `${path}.${layer.name}`)];
    }),
    ...(cell.of === 'numbers' ? cell.columns.map((column) => `${cell.name}.${column.name}`) : []),
  ],
  texts: (cell) => [
    { path: cell.name, text: cell.text },
    ...cell.options.flatMap((option) => optionTexts(cell, option)),
  ],
  put(cell, path, text) {
    if (path === cell.name) return { ...cell, text };
    for (const [k, option] of cell.options.entries()) {
      const changed = putInOption(cell, option, path, text);
      if (changed) return { ...cell, options: withRow(cell.options, k, changed) };
    }
    return undefined;
  },
  rename: renameIn,
  rewrite: (cell, change) =>
    mapFields(cell, {
      text: change.formula(cell.text),
      options: mapRows(cell.options, (option) =>
        cell.of === 'library' ? mapFields(option, { name: change.path(option.name) }) : rewriteOption(option, change),
      ),
    }),
  lay(cell, builder) {
    if (builder.claim(cell.name, cell.id)) layChoice(cell, builder);
  },
};

function optionTexts(cell: ChoiceCell, option: ChoiceOption): Text[] {
  const path = `${cell.name}.${option.name}`;
  if (cell.of === 'stack') {
    return (option.layers ?? []).flatMap((layer) => [
      { path: `${path}.${layer.name}`, text: layer.text },
      { path: `${path}.${layer.name}.material`, text: layer.material },
    ]);
  }
  if (cell.of === 'library') return [];
  return cell.columns.map((column) => ({
    path: `${path}.${column.name}`,
    text: option.values?.[column.name] ?? '',
  }));
}

function putInOption(cell: ChoiceCell, option: ChoiceOption, path: string, text: string): ChoiceOption | undefined {
  const within = `${cell.name}.${option.name}.`;
  if (!path.startsWith(within) || cell.of === 'library') return undefined;
  const rest = path.slice(within.length);
  if (cell.of === 'numbers') {
    const known = cell.columns.some((column) => column.name === rest);
    return known ? { ...option, values: withText(option.values ?? {}, rest, text) } : undefined;
  }
  const layers = option.layers ?? [];
  for (const [k, layer] of layers.entries()) {
    if (rest === layer.name) return { ...option, layers: withRow(layers, k, { ...layer, text }) };
    if (rest === `${layer.name}.material`) {
      return { ...option, layers: withRow(layers, k, { ...layer, material: text }) };
    }
  }
  return undefined;
}

function renameIn(cell: ChoiceCell, path: string, to: string): ChoiceCell | undefined {
  if (path === cell.name) return { ...cell, name: to };
  for (const [k, option] of cell.options.entries()) {
    const own = `${cell.name}.${option.name}`;
    if (cell.of === 'library') return undefined;
    if (path === own) {
      const text = cell.text === option.name ? to : renameInFormula(cell.text, option.name, to);
      return { ...cell, text, options: withRow(cell.options, k, { ...option, name: to }) };
    }
    const layers = option.layers ?? [];
    const l = layers.findIndex((layer) => path === `${own}.${layer.name}`);
    if (l >= 0) {
      const renamed = withRow(layers, l, { ...layers[l]!, name: to });
      return { ...cell, options: withRow(cell.options, k, { ...option, layers: renamed }) };
    }
  }
  const c = cell.columns.findIndex((column) => path === `${cell.name}.${column.name}`);
  if (c < 0) return undefined;
  const from = cell.columns[c]!.name;
  const options = mapRows(cell.options, (option) =>
    option.values && from in option.values
      ? {
          ...option,
          values: Object.fromEntries(Object.entries(option.values).map(([n, t]) => [n === from ? to : n, t])),
        }
      : option,
  );
  return { ...cell, columns: withRow(cell.columns, c, { ...cell.columns[c]!, name: to }), options };
}

function rewriteOption(option: ChoiceOption, { formula }: Rewrite): ChoiceOption {
  const change: Partial<ChoiceOption> = {};
  if (option.values) Object.assign(change, { values: mapTexts(option.values, formula) });
  if (option.layers) {
    const layers = mapRows(option.layers, (layer) =>
      mapFields(layer, { material: formula(layer.material), text: formula(layer.text) }),
    );
    Object.assign(change, { layers });
  }
  return mapFields(option, change);
}

function layChoice(cell: ChoiceCell, builder: Builder): void {
  const count = cell.options.length;
  if (count > MOST_OPTIONS) {
    const message = `${named(cell.name)} has ${count} options. At most ${MOST_OPTIONS} are allowed: remove some.`;
    builder.fault({ cell: cell.id, path: cell.name, message });
  }
  const options = cell.options
    .slice(0, MOST_OPTIONS)
    .filter((option) => builder.claim(`${cell.name}.${option.name}`, cell.id, 'option'));
  const names = options.map((option) => option.name);
  if (names.length === 0) {
    const message = `${named(cell.name)} has no options. Give it at least one.`;
    builder.fault({ cell: cell.id, path: cell.name, message });
    return;
  }
  const picked = builder.text({
    cell: cell.id,
    path: cell.name,
    text: cell.text,
    kind: 'choice',
    title: cell.title,
    unit: '',
    wants: { options: names },
    needed: `Nothing is picked for ${named(cell.name)}. Pick one of ${allOptions(cell.name, names)}.`,
  });
  if (cell.of === 'library') {
    layLibraryChoice(cell, options, picked, builder);
    return;
  }
  const columns = layColumns(cell, builder);
  if (columns.length === 0) return;
  const numbers = options.map((option) => layOption(cell, option, columns, builder));
  builder.later(() => {
    const writes = columns.map((column) => column.slot);
    builder.step(choiceStep({ cell: cell.id, path: cell.name, picked, names, numbers, writes }));
  });
}

/** The numbers that every option gives: those of a stack, or the choice's own columns. */
function layColumns(cell: ChoiceCell, builder: Builder): ValueSpec[] {
  const columns: ValueSpec[] = [];
  for (const column of cell.of === 'stack' ? STACK_COLUMNS : cell.columns) {
    const path = `${cell.name}.${column.name}`;
    if (!builder.claim(path, cell.id)) continue;
    const dimension = builder.unit(column.unit, path, cell.id);
    if (!dimension) continue;
    const value: ValueSpec = { ...column, cell: cell.id, path, slot: builder.slots(path), dimension, kind: 'choice' };
    builder.value(value);
    columns.push(value);
  }
  return columns;
}

/** Lays one option and gives the slots of its numbers, in the order of the columns. */
function layOption(cell: ChoiceCell, option: ChoiceOption, columns: readonly ValueSpec[], builder: Builder): Slot[] {
  const path = `${cell.name}.${option.name}`;
  const nameOf = (column: ValueSpec): string => column.path.slice(cell.name.length + 1);
  if (cell.of === 'stack') {
    const folds = layStack(cell.id, path, option.layers ?? [], builder);
    return columns.map((column) => folds.get(nameOf(column))!);
  }
  return columns.map((column) =>
    builder.text({
      cell: cell.id,
      path: `${path}.${nameOf(column)}`,
      text: option.values?.[nameOf(column)] ?? '',
      kind: 'choice',
      title: `${option.title}: ${column.title}`,
      unit: column.unit,
      wants: { dimension: column.dimension },
      detail: true,
    }),
  );
}
