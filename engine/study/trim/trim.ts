import { readEntry } from '../../formula/index';
import type { Document, Part } from '../../sheet/document';
import { freeName, takenNames } from '../../sheet/free-names';
import { editLive, type Live } from '../../sheet/live';
import { cellsOf } from '../../sheet/sheets';
import type { Library } from '../../sheet/specs';
import { applyChange } from '../../sheet/transaction';
import { formatQuantity, fromSI, writeQuantity } from '../../units/index';
import { type Figures, figuresOf, typedValue, withNumber } from '../field/numbers';
import { withModels } from '../field/with-models';
import { stepIn, tipWeightIn } from '../place/index';
import { CHANGES, type TrimChange } from './changes';
import { OBSERVATIONS, type TrimAnswer } from './told';

/** The change that mends what is seen, and what the model of this design expects of it. */
export function trimFor(key: string, open: Live, library: Library): TrimAnswer {
  const change = CHANGES[key];
  const observation = OBSERVATIONS.find((each) => each.key === key);
  if (!change || !observation) throw new RangeError(`Nothing that is seen is called ${key}`);
  const roles = [...change.watch, change.of].flatMap((of) => (of.includes('.') ? [of.split('.')[0]!] : []));
  const live = withModels(open, roles, library);
  const made = changed(change, live, library);
  if (typeof made === 'string') return { ok: false, message: made };
  const before = figuresOf(live, library);
  const after = figuresOf(editLive(live, made.document, library).live, library);
  const lacking = roles.find((role) => !figuresOf(open, library).path(`${role}.`));
  const estimated =
    lacking === undefined ? '' : `The design has no ${lacking} of its own yet: these numbers rest on estimates. `;
  const figures = change.watch.map((of) => ({
    title: before.info(of)?.title ?? of,
    before: before.text(of),
    after: after.text(of),
  }));
  return { ok: true, change: made.words, figures, unsaid: `${estimated}${change.unsaid}`.trim() };
}

type Made = { readonly document: Document; readonly words: string };

function changed(change: TrimChange, live: Live, library: Library): Made | string {
  const { document } = live.compiled;
  const by = stepIn(change.by, document.units);
  const unit = by.split(' ').at(-1)!;
  const read = readEntry(by, unit);
  if (!read.ok) throw new RangeError(`${by} is no amount`);
  const say = (to: number): string =>
    change.words.replace('{by}', formatQuantity(read.si, unit)).replace('{to}', formatQuantity(to, unit));
  if (change.of === 'nose') return withNoseWeight(live, figuresOf(live, library), read.si, say(Number.NaN));
  const path = change.of === 'tip' ? tipPath(live) : figuresOf(live, library).path(change.of);
  if (path === undefined) {
    return change.of === 'tip'
      ? 'No part of the design is tip weight. Add one to the parts, outboard, and what it does is told here.'
      : `The design has no ${change.of.split('.')[0]} to be changed.`;
  }
  const now = typedValue(live, path);
  const to = now + change.sign * read.si;
  if (Number.isNaN(now)) return 'The design has no number there to be changed from. Type one.';
  if (change.of === 'tip' && to < 0) {
    return `Only ${formatQuantity(now, unit)} of tip weight are there to be taken. Move the leadout guide or look for a warp.`;
  }
  return { document: withNumber(live, document, path, to), words: say(to) };
}

const tipPath = (live: Live): string | undefined => {
  const tip = tipWeightIn(live.compiled.document, live);
  return tip && `${tip.path}.mass`;
};

/** The design with a weight where its nose is. */
function withNoseWeight({ compiled }: Live, figures: Figures, mass: number, words: string): Made | string {
  const { document } = compiled;
  const x = figures.value('body.nose_x');
  if (Number.isNaN(x)) return 'The design does not say where its nose is.';
  const name = freeName('nose_weight', new Set(takenNames(document)));
  const fields = { mass: writeQuantity(mass, 'g'), x: `${fromSI(x, 'mm')} mm` };
  const weight: Part = { name, title: 'Nose weight', shape: 'point', fields };
  const table = cellsOf(document).find((cell) => cell.kind === 'parts');
  if (table?.kind !== 'parts') return 'The design has no weights to add to.';
  const cell = { ...table, rows: [...table.rows, weight] };
  return { document: applyChange(document, { change: 'cell', cell }).document, words };
}
