import { withText } from '../../sheet/baseline';
import { inSentence } from '../../sheet/called';
import type { Cell, Document, Sheet, VariablesCell } from '../../sheet/document';
import { freeIds, freeName, takenNames } from '../../sheet/free-names';
import { type Live, openLive } from '../../sheet/live';
import { putText, textAt } from '../../sheet/paths';
import { cellsOf, freeSheetId } from '../../sheet/sheets';
import type { Library } from '../../sheet/specs';
import { movedVariants } from '../../sheet/variants';
import { askedOf } from './asked';
import { carriesFuel, driveOf } from './drive';
import { type Meant, namedPiece, namedText } from './names';
import { picksIn } from './picks';
import { propellerIn } from './propeller';
import { linkedRoles, meantBy, newModel, standIn, titleOf } from './roles';
import { type Slid, slideIn } from './slides';
import { withSteps } from './steps';
import { makeStock } from './stock';
import type { Study } from './study';
import { tipWeightIn } from './tip-weight';
import { MAKE, type StudyAnswer, type StudyAsk, type StudyLack } from './told';
import { watchedAlready } from './watched';

type Made = Slid & { readonly is: 'made' };

/** What is found out of a design on the way to placing a study on it. */
interface Placing {
  readonly study: Study;
  readonly live: Live;
  readonly library: Library;
  /** Names of the study → what they stand for here, and those that stand for nothing. */
  readonly meant: Map<string, Meant>;
  readonly missing: Set<string>;
  /** Names that something has by now. */
  readonly taken: Set<string>;
  readonly ids: () => string;
  readonly says: string[];
  readonly asks: StudyAsk[];
  readonly lacks: StudyLack[];
}

/**
 * Puts a study on a design as one sheet behind all others: what it needs and the design lacks is added there, numbers that must
 * slide become variables of that sheet, and everything speaks of the design's own things. `answers`: which choice is taken for a pick,
 * or that it is to be made.
 */
export function placeStudy(
  study: Study,
  open: Live,
  library: Library,
  answers: Readonly<Record<string, string>> = {},
): StudyAnswer {
  const stock = study.picks.find((pick) => pick.of === 'stack' && answers[pick.as] === MAKE);
  const made = stock && picksIn(stock, open).length === 0 ? makeStock(open, library) : undefined;
  const live = made?.live ?? open;
  const { document } = live.compiled;
  if (!cellsOf(document).some((cell) => cell.kind === 'parts')) {
    return { ok: false, message: 'A study reads the weights: add a table of weight and balance first.' };
  }
  const { question, unfit } = askedOf(study, document, library.blocks);
  if (unfit !== '') return { ok: false, message: unfit };
  const placing: Placing = {
    ...{
      study,
      live,
      library,
      meant: new Map(),
      missing: new Set(),
      says: made ? [made.says] : [],
      asks: [],
      lacks: [],
    },
    ...{ taken: new Set(takenNames(document)), ids: freeIds(document) },
  };
  const models = addModels(placing);
  const id = freeSheetId(document);
  const grown = { ...document, sheets: [...document.sheets, { id, title: question, pieces: models }] };
  const { made: slides, ends } = addSlides(placing, models.length === 0 ? live : openLive(grown, library));
  addPicks(placing, answers);
  const own = remarked(ownPieces(placing, ends), placing);
  const pieces = inOrder(own, setting(slides, placing), models);
  return {
    ...{ ok: true, sheet: id, asks: placing.asks, lacks: placing.lacks, says: placing.says },
    document: withStudy(grown, { id, title: question, pieces }, models, slides),
  };
}

/** Finds what stands in for every role that the study reads; what the design lacks is given back, to be added. */
function addModels({ study, live, library, meant, missing, taken, ids, says }: Placing): Cell[] {
  const { document } = live.compiled;
  const models: Cell[] = [];
  for (const role of needed(study, library)) {
    const there = standIn(document, role, library.blocks);
    if (!there && study.fuelled.includes(role) && !carriesFuel(document)) {
      missing.add(role);
      says.push(`Leaves out ${inSentence(titleOf(role, library.blocks))}: no part of this design is fuel.`);
      continue;
    }
    const fields = study.fields[role] ?? {};
    const piece =
      there ?? newModel(role, library.blocks, { id: ids(), taken, fields, isOpen: study.open.includes(role) });
    if (!there) {
      models.push(piece);
      taken.add(piece.name);
      says.push(`Adds ${inSentence(piece.title)}, with everything as it is estimated until you type it.`);
    }
    meant.set(role, meantBy(piece));
  }
  meant.set('drive', { path: '', title: driveOf(document, library.blocks) });
  const tip = tipWeightIn(document, live);
  if (tip) meant.set('tip', tip);
  const propeller = propellerIn(document, library.blocks);
  if (propeller) for (const [name, size] of Object.entries(propeller)) meant.set(name, size);
  return models;
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

/** `seen`: the design with the models that are added. */
function addSlides({ study, meant, missing, taken, says }: Placing, seen: Live) {
  const made: Made[] = [];
  const ends = new Map<string, readonly [string, string]>();
  const at = (path: string): string => path.replace(/^[^.]+/, (role) => meant.get(role)?.path ?? role);
  for (const slide of study.slides) {
    const moot = slide.unless !== '' && (textAt(seen.compiled.document, at(slide.unless)) ?? '').trim() !== '';
    const slid = moot
      ? undefined
      : slideIn(slide, at(slide.of), at(slide.blank || slide.of), seen, freeName(slide.as, taken));
    if (moot) meant.set(slide.as, { path: at(slide.unless), title: titleAt(at(slide.unless), seen) });
    else if (!slid) missing.add(slide.as);
    else if (slid.is !== 'made') {
      meant.set(slide.as, { path: slid.path, title: inSentence(slid.title) });
      if (slid.is === 'tried') ends.set(slid.path, slid.ends);
    } else {
      const { name, title, text, low, high } = slid.variable;
      made.push(slid);
      taken.add(name);
      meant.set(slide.as, { path: name, title });
      says.push(`Makes a slide of ${title}: ${low} to ${high}, now ${text}.`);
    }
  }
  return { made, ends };
}

const titleAt = (path: string, { compiled }: Live): string =>
  inSentence(compiled.names.find((info) => info.path === path)?.title ?? path);

function addPicks(
  { study, live, library, meant, missing, says, asks, lacks }: Placing,
  answers: Readonly<Record<string, string>>,
): void {
  for (const pick of study.picks) {
    const options = picksIn(pick, live);
    const choice = options.find((each) => each.name === answers[pick.as]) ?? options[0];
    if (!choice) {
      missing.add(pick.as);
      const sentence = `Leaves out ${pick.what}: no part of the design is made of a choice.`;
      const offered = pick.of === 'stack' && makeStock(live, library);
      if (offered) lacks.push({ as: pick.as, sentence, offer: `Make a choice of ${pick.what.replace(/^the /, '')}` });
      else says.push(sentence);
      continue;
    }
    meant.set(pick.as, meantBy(choice));
    if (options.length === 1) continue;
    const names = options.map(({ name, title }) => ({ name, title }));
    asks.push({ as: pick.as, question: `Which choice is ${pick.what}?`, options: names, taken: choice.name });
  }
}

function ownPieces(placing: Placing, ends: ReadonlyMap<string, readonly [string, string]>): Cell[] {
  const { study, live, meant, missing, ids, says } = placing;
  const { document } = live.compiled;
  for (const { name } of study.pieces) meant.set(name, { path: give(name, placing), title: '' });
  return study.pieces.flatMap((template) => {
    const piece = namedPiece(template, meant, missing) as unknown as Cell | undefined;
    if (!piece) return [];
    const watching = watchedAlready(piece, document);
    if (watching) {
      says.push(`Leaves out the stop “${piece.title}”: “${watching.title}” of the design watches the same.`);
      return [];
    }
    return [withSteps(withEnds({ ...piece, id: ids() } as unknown as Cell, ends), document.units)];
  });
}

/** The study’s pieces, the first note with what is to be said of this design’s own kinds; the preview says it too. */
function remarked(pieces: readonly Cell[], { study, live, library, meant, says }: Placing): readonly Cell[] {
  const fits = study.remarks.filter(({ role, of }) => {
    const piece = standIn(live.compiled.document, role, library.blocks);
    return piece?.kind === 'model' && of.includes(piece.of);
  });
  const said = fits.map((remark) => namedText(remark.says, meant));
  says.push(...said);
  const note = pieces.find(({ kind }) => kind === 'note');
  return pieces.map((piece) =>
    piece === note && piece.kind === 'note' ? { ...piece, text: [piece.text, ...said].join('\n\n') } : piece,
  );
}

/** Only a variable has limits of its own: what else is tried is given them. */
function withEnds(cell: Cell, ends: ReadonlyMap<string, readonly [string, string]>): Cell {
  if (cell.kind !== 'trial_series' && cell.kind !== 'best_compromises') return cell;
  const axes = cell.axes.map((axis) => {
    const [low, high] = ends.get(axis.of) ?? [];
    return low !== undefined && high !== undefined && axis.low === '' ? { ...axis, low, high } : axis;
  });
  return { ...cell, axes };
}

function give(name: string, { taken }: Placing): string {
  const free = freeName(name, taken);
  taken.add(free);
  return free;
}

/** The numbers that became variables, as one schedule. */
function setting(made: readonly Made[], placing: Placing): readonly VariablesCell[] {
  if (made.length === 0) return [];
  const rows = made.map(({ variable }) => variable);
  return [{ kind: 'variables', id: placing.ids(), name: give('to_try', placing), title: 'Try these', rows }];
}

/** The question first, then what is set, the study's own pieces, and what was added to the model. */
function inOrder(own: readonly Cell[], set: readonly Cell[], models: readonly Cell[]): readonly Cell[] {
  const [first, ...rest] = own;
  return [...(first ? [first] : []), ...set, ...rest, ...models];
}

/** The design whose last sheet is the study's, with its fields reading the variables that were made of their numbers. */
function withStudy(grown: Document, sheet: Sheet, models: readonly Cell[], made: readonly Made[]): Document {
  // What is only being added is no part of the baseline.
  const added = new Set(models.map((model) => model.name));
  const typed = made.reduce((now, { field, variable }) => {
    const put = added.has(field.split('.', 1)[0]!) ? putText : withText;
    return put(now, field, variable.name) ?? now;
  }, grown);
  const variants = movedVariants(grown, new Map(made.map(({ field, variable }) => [field, [variable.name]])));
  const slid = variants ? { ...typed, variants } : typed;
  const onSheet = new Map(slid.sheets.at(-1)!.pieces.map((piece) => [piece.id, piece]));
  const pieces = sheet.pieces.map((piece) => onSheet.get(piece.id) ?? piece);
  const blank = made.filter(({ before }) => before.trim() === '');
  const took = Object.fromEntries(blank.map(({ field, variable }) => [field, variable.text]));
  const whole = { ...sheet, pieces, ...(blank.length > 0 ? { took } : {}) };
  return { ...slid, sheets: slid.sheets.with(-1, whole) };
}
