import { type AnyBlock, isLink } from '../../blocks/block';
import { withText } from '../../sheet/baseline';
import { inSentence, listed } from '../../sheet/called';
import type { BlockCell, Document } from '../../sheet/document';
import { freeId, takenNames } from '../../sheet/free-names';
import { keepingBaseline } from '../../sheet/keep-baseline';
import { faultsOfLive, type Live, openLive } from '../../sheet/live';
import { cellsOf, sheetOfPiece } from '../../sheet/sheets';
import type { Library } from '../../sheet/specs';
import { applyChanges, type Change } from '../../sheet/transaction';
import { formatQuantity } from '../../units/index';
import { newModel, standIn } from '../place/index';
import { flownBy, seedTexts, textOf } from './seeds';
import { settledNames } from './settled-names';
import type { MakingAnswer } from './told';

/**
 * Puts another kind of the same role in the place of a piece of the model: an engine by its data for one by a timed lap. Its name,
 * place and links stay; what both kinds have is kept, what the new one lacks is taken from what the design flies with now.
 */
export function swapKind(id: string, to: string, live: Live, library: Library): MakingAnswer {
  const { document } = live.compiled;
  const cell = cellsOf(document).find((each): each is BlockCell => each.id === id && each.kind === 'model');
  const [was, is] = [cell?.of, to].map((kind) => library.blocks.find((block) => block.kind === kind));
  if (!cell || !was || !is || was === is || (was.role ?? was.kind) !== (is.role ?? is.kind)) {
    return { ok: false, message: 'There is no such kind to put in its place.' };
  }
  const kept = Object.entries(cell.fields).filter(([name]) => bothHave(name, was, is));
  const gone = Object.entries(cell.fields).filter(
    ([name, text]) => text !== '' && !bothHave(name, was, is) && was.fields[name],
  );
  const flown = flownBy(live, library.blocks);
  const propeller = propellerFor(was, is, cell, live, library);
  const seeds = seedTexts(is, flown, document.units === 'inch_pound');
  const fields = { ...seeds, ...propeller.fields, ...Object.fromEntries(kept) };
  const title = cell.title.replace(/^Motor/, 'Engine') === was.title ? is.title : cell.title;
  const settled = settledNames(cell, was, is, live, propeller.moves);
  const changes: Change[] = [{ change: 'cell', cell: { ...cell, of: is.kind, title, fields } }, ...settled.changes];
  if (propeller.added) {
    const sheet = sheetOfPiece(document, id)!;
    const at = sheet.pieces.findIndex((piece) => piece.id === id) + 1;
    changes.push({ change: 'insert', sheet: sheet.id, at, cell: propeller.added });
  }
  const swapped = asTimed(applyChanges(document, keepingBaseline(document, changes)).document, cell, live, library);
  const lap = flown('flight', 'lap_time');
  const then = openLive(swapped, library);
  const lapThen = flownBy(then, library.blocks)('flight', 'lap_time');
  const before = new Set(faultsOfLive(live).map(({ message }) => message));
  const faults = faultsOfLive(then).filter(({ state, message }) => state === 'fault' && !before.has(message));
  const taken = Object.entries(seeds);
  const says = [
    ...(kept.length > 0 ? [`Keeps ${fieldTitles(kept, is)}.`] : []),
    ...propeller.says,
    ...(taken.length > 0
      ? [`Takes from the design as it flies now: ${fieldTitles(taken, is)}. Type what you know better.`]
      : []),
    ...(gone.length > 0 ? [`Takes away ${fieldTitles(gone, was)}.`] : []),
    ...(settled.titles.length > 0
      ? [`Formulas that read ${fewOf(settled.titles.map(inSentence))} go on with the number that it is now.`]
      : []),
    ...(Number.isFinite(lapThen)
      ? [`A lap takes ${formatQuantity(lapThen, 's')} then; now it takes ${formatQuantity(lap, 's')}.`]
      : []),
    ...faults.map(({ message }) => `Then wrong: ${message}`),
  ];
  return { ok: true, document: swapped, cell: id, path: cell.name, says, done: `${cell.title} is “${is.title}” now.` };
}

/** What the fields of these texts are called, in a sentence. */
const fieldTitles = (texts: readonly (readonly [name: string, text: string])[], block: AnyBlock): string =>
  fewOf(
    texts.map(([name]) => {
      const field = block.fields[name];
      return field && 'title' in field ? inSentence(field.title) : name;
    }),
  );

/** So many are named before the rest is only counted. */
const NAMED = 6;

/** "a, b and 12 more": nobody reads a list of twenty. */
const fewOf = (titles: readonly string[]): string =>
  titles.length <= NAMED + 1 ? listed(titles) : listed([...titles.slice(0, NAMED), `${titles.length - NAMED} more`]);

/** Whether a field means the same in both: a number of one dimension, one of the same options, a link to the same role. */
function bothHave(name: string, a: AnyBlock, b: AnyBlock): boolean {
  const [one, other] = [a.fields[name], b.fields[name]];
  if (!one || !other) return false;
  if (isLink(one) || isLink(other)) return isLink(one) && isLink(other);
  if ('option' in one || 'option' in other) return 'option' in one && 'option' in other;
  return JSON.stringify(one.dimension) === JSON.stringify(other.dimension);
}

interface Propeller {
  readonly fields: Readonly<Record<string, string>>;
  readonly added?: BlockCell;
  /** Where its sizes go. */
  readonly moves: readonly (readonly [from: string, to: string])[];
  readonly says: readonly string[];
}

/** An engine knows its propeller itself or turns one that is a piece of its own: size goes from the one to the other. */
function propellerFor(was: AnyBlock, is: AnyBlock, cell: BlockCell, live: Live, library: Library): Propeller {
  const { document } = live.compiled;
  const turns = (block: AnyBlock): boolean =>
    Object.values(block.fields).some((field) => isLink(field) && field.link === 'propeller');
  if (turns(was) === turns(is) || !('propeller_diameter' in { ...was.fields, ...is.fields }))
    return { fields: {}, moves: [], says: [] };
  const there = standIn(document, 'propeller', library.blocks);
  if (turns(was)) {
    if (!there) return { fields: {}, moves: [], says: [] };
    return {
      moves: [],
      fields: { propeller_diameter: `${there.name}.diameter`, pitch: `${there.name}.pitch` },
      says: [`Reads diameter and pitch from “${there.title}”, which stays.`],
    };
  }
  const movesTo = (name: string): Propeller['moves'] => [
    [`${cell.name}.propeller_diameter`, `${name}.diameter`],
    [`${cell.name}.pitch`, `${name}.pitch`],
  ];
  if (there) return { fields: {}, moves: movesTo(there.name), says: [`Turns “${there.title}”.`] };
  const flown = flownBy(live, library.blocks);
  const unit = document.units === 'inch_pound' ? 'in' : 'mm';
  const now = (result: string): string => textOf(flown('engine', result), unit);
  const fields = {
    diameter: cell.fields.propeller_diameter || now('propeller_diameter'),
    pitch: cell.fields.pitch || now('pitch'),
  };
  const added = newModel('propeller', library.blocks, {
    id: freeId(document),
    taken: takenNames(document),
    fields,
    isOpen: false,
  });
  const said = (result: string): string => formatQuantity(flown('engine', result), unit);
  const says = [`Adds a propeller of ${said('propeller_diameter')} by ${said('pitch')}.`];
  return { fields: {}, added, moves: movesTo(added.name), says };
}

/** A lap that is timed on the design as it stands takes as long as now: trim and side force are in the drag that it is told. */
function asTimed(swapped: Document, cell: BlockCell, live: Live, library: Library): Document {
  const now = cellsOf(swapped).find((each) => each.id === cell.id);
  if (now?.kind !== 'model' || now.of !== 'measured_lap') return swapped;
  const then = flownBy(openLive(swapped, library), library.blocks);
  const late = then('flight', 'lap_time') / flownBy(live, library.blocks)('flight', 'lap_time');
  const pressure = 0.5 * then('air', 'density') * then('engine', 'lap_speed') ** 2;
  const missing = ((late ** 3 - 1) * then('engine', 'lap_thrust')) / pressure;
  const drag = then('engine', 'drag_area_then') + missing;
  const induced = then('engine', 'induced_area_then');
  if (!Number.isFinite(drag) || !Number.isFinite(induced)) return swapped;
  const inchPound = swapped.units === 'inch_pound';
  const texts = [
    ['known_drag_area', textOf(drag, inchPound ? 'in²' : 'cm²')],
    ['known_induced_area', textOf(induced, inchPound ? 'in²' : 'dm²')],
  ] as const;
  return texts.reduce((made, [name, text]) => withText(made, `${cell.name}.${name}`, text) ?? made, swapped);
}
