import { withText } from '../../sheet/baseline';
import type { Cell, Document, Sheet, VariablesCell } from '../../sheet/document';
import { freeName, takenNames } from '../../sheet/free-names';
import { type Live, openLive } from '../../sheet/live';
import { putText } from '../../sheet/paths';
import { cellsOf, freeSheetId } from '../../sheet/sheets';
import type { Library } from '../../sheet/specs';
import { type Meant, namedPiece } from './names';
import { picksIn } from './picks';
import { linkedRoles, lowered, meantBy, newModel, standIn } from './roles';
import { type Slid, slideIn } from './slides';
import type { Study } from './study';
import { tipWeightIn } from './tip-weight';
import type { StudyAnswer, StudyAsk } from './told';

/**
 * Puts a study on a design as one sheet behind all others: what it needs and the design lacks is added there, numbers that must
 * slide become variables of that sheet, and everything speaks of the design's own things. `answers`: which choice is taken for a pick.
 */
export function placeStudy(
  study: Study,
  live: Live,
  library: Library,
  answers: Readonly<Record<string, string>> = {},
): StudyAnswer {
  const { document } = live.compiled;
  const meant = new Map<string, Meant>();
  const missing = new Set<string>();
  const says: string[] = [];
  const asks: StudyAsk[] = [];
  const taken = new Set(takenNames(document));
  const give = (name: string): string => {
    const free = freeName(name, taken);
    taken.add(free);
    return free;
  };
  const ids = idsAfter(document);

  if (!cellsOf(document).some((cell) => cell.kind === 'parts')) {
    return { ok: false, message: 'A study reads the weights: add a table of weight and balance first.' };
  }
  const models: Cell[] = [];
  for (const role of needed(study, library)) {
    const there = standIn(document, role, library.blocks);
    const piece = there ?? newModel(role, library.blocks, { id: ids(), taken, fields: study.fields[role] ?? {} });
    if (!there) {
      models.push(piece);
      taken.add(piece.name);
      says.push(`Adds ${lowered(piece.title)}, with everything as it is estimated until you type it.`);
    }
    meant.set(role, meantBy(piece));
  }

  const tip = tipWeightIn(document, live);
  if (tip) meant.set('tip', tip);
  const id = freeSheetId(document);
  const grown = withSheet(document, { id, title: study.question, pieces: models });
  const seen = models.length === 0 ? live : openLive(grown, library);
  const made: (Slid & { is: 'made' })[] = [];
  const ends = new Map<string, readonly [string, string]>();
  for (const slide of study.slides) {
    const at = (path: string): string => path.replace(/^[^.]+/, (role) => meant.get(role)?.path ?? role);
    const slid = slideIn(slide, at(slide.of), at(slide.blank || slide.of), seen, freeName(slide.as, taken));
    if (!slid) missing.add(slide.as);
    else if (slid.is !== 'made') {
      meant.set(slide.as, { path: slid.path, title: lowered(slid.title) });
      if (slid.is === 'tried') ends.set(slid.path, slid.ends);
    } else {
      made.push(slid);
      taken.add(slid.variable.name);
      const { name, title, text, low, high } = slid.variable;
      meant.set(slide.as, { path: name, title });
      says.push(`Makes a slide of ${title}: ${low} to ${high}, now ${text}.`);
    }
  }

  for (const pick of study.picks) {
    const options = picksIn(pick, live);
    const choice = options.find((each) => each.name === answers[pick.as]) ?? options[0];
    if (!choice) {
      missing.add(pick.as);
      says.push(`Leaves out ${pick.what}: no part of the design is made of a choice.`);
      continue;
    }
    meant.set(pick.as, meantBy(choice));
    if (options.length === 1) continue;
    const names = options.map(({ name, title }) => ({ name, title }));
    asks.push({ as: pick.as, question: `Which choice is ${pick.what}?`, options: names, taken: choice.name });
  }

  for (const { name } of study.pieces) meant.set(name, { path: give(name), title: '' });
  const own = study.pieces.flatMap((template) => {
    const piece = namedPiece(template, meant, missing);
    return piece ? [withEnds({ ...piece, id: ids() } as unknown as Cell, ends)] : [];
  });
  const blank = made.filter(({ before }) => before.trim() === '');
  const took = Object.fromEntries(blank.map(({ field, variable }) => [field, variable.text]));
  // What is only being added is no part of the baseline.
  const added = new Set(models.map((model) => model.name));
  const slid = made.reduce((now, { field, variable }) => {
    const put = added.has(field.split('.', 1)[0]!) ? putText : withText;
    return put(now, field, variable.name) ?? now;
  }, grown);
  const placed = slid.sheets.map((sheet): Sheet => {
    if (sheet.id !== id) return sheet;
    const pieces = inOrder(own, setting(made, give, ids), sheet.pieces);
    return { id, title: study.question, pieces, ...(blank.length > 0 ? { took } : {}) };
  });
  return { ok: true, document: { ...slid, sheets: placed }, sheet: id, asks, says };
}

const withSheet = (document: Document, sheet: Sheet): Document => ({
  ...document,
  sheets: [...document.sheets, sheet],
});

/** Only a variable has limits of its own: what else is tried is given them. */
function withEnds(cell: Cell, ends: ReadonlyMap<string, readonly [string, string]>): Cell {
  if (cell.kind !== 'trial_series') return cell;
  const axes = cell.axes.map((axis) => {
    const [low, high] = ends.get(axis.of) ?? [];
    return low !== undefined && high !== undefined && axis.low === '' ? { ...axis, low, high } : axis;
  });
  return { ...cell, axes };
}

/** Roles that the study reads, each behind those that it links to itself. */
function needed({ needs }: Study, { blocks }: Pick<Library, 'blocks'>): readonly string[] {
  const order: string[] = [];
  const add = (role: string): void => {
    if (order.includes(role)) return;
    for (const other of linkedRoles(role, blocks)) if (!order.includes(other)) add(other);
    order.push(role);
  };
  for (const role of needs) add(role);
  return order;
}

/** The numbers that became variables, as one schedule. */
function setting(
  made: readonly (Slid & { is: 'made' })[],
  give: (name: string) => string,
  ids: () => string,
): readonly VariablesCell[] {
  if (made.length === 0) return [];
  const rows = made.map(({ variable }) => variable);
  return [{ kind: 'variables', id: ids(), name: give('to_try'), title: 'Try these', rows }];
}

/** The question first, then what is set, the study's own pieces, and what was added to the model. */
function inOrder(own: readonly Cell[], set: readonly Cell[], models: readonly Cell[]): readonly Cell[] {
  const [first, ...rest] = own;
  return [...(first ? [first] : []), ...set, ...rest, ...models];
}

function idsAfter(document: Document): () => string {
  let last = Math.max(0, ...cellsOf(document).map((cell) => Number(/^c(\d+)$/.exec(cell.id)?.[1] ?? 0)));
  return () => `c${String(++last).padStart(2, '0')}`;
}
