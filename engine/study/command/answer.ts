import type { SpreadCell } from '../../sheet/document';
import { openText } from '../../sheet/file';
import { faultsOfLive, type Live, openLive } from '../../sheet/live';
import { cellsOf } from '../../sheet/sheets';
import type { Library } from '../../sheet/specs';
import { remadeSentences } from '../../sheet/weighed-as';
import type { NameInfo } from '../../terms/index';
import { tellFit } from '../fit/command';
import { findStudy } from '../kinds/find';
import { studyKinds } from '../kinds/index';
import type { Section, StudyCell, StudyKind } from '../kinds/kind';
import { sentenceOf } from '../run/cause';
import { readSpread } from '../spread/command';
import { spreadSection } from '../spread/index';
import type { SpreadInput } from '../spread/input';
import { planDesigns } from '../spread/plan';
import type { Request } from './arguments';
import { tellBreaches, tellCheck } from './checks';
import { nameData, nameLine } from './names';
import { tellReconciled } from './reconcile';
import { setTexts } from './set';
import { meant, namesByPath, tellValue } from './values';
import { variantTexts } from './variant';

/** What the command prints, and what it ends with. */
export interface Answer {
  readonly out: string;
  /** Notes and faults, a sentence a line. */
  readonly err: string;
  readonly code: 0 | 1;
}

type Names = ReadonlyMap<string, NameInfo>;

/** Answers one request about the text of a file. */
export function answer(request: Request, file: string, library: Library): Answer {
  const opened = openText(file);
  if (!opened.ok) {
    return ended('', [opened.message, ...opened.problems.slice(1).map((problem) => problem.message)], 1);
  }
  const opening = openLive(opened.document, library);
  const variant = variantTexts(opening, request.variant);
  if (typeof variant === 'string') return ended('', [variant], 1);
  const set = setTexts(opening, [...variant.texts, ...request.set], library);
  if (!set.ok) return ended('', [...set.notes, ...set.faults], 1);
  const { live } = set;
  const notes = [...variant.notes, ...set.notes, ...remadeSentences(live.compiled.document, tradedIn(request, live))];
  const sections = sectionsOf(request, live, namesByPath(live), library);
  const faults = sections.flatMap((section) => section.faults);
  const data = Object.assign({}, ...sections.map((section) => section.data));
  const out = request.json
    ? `${JSON.stringify({ ...data, notes, faults }, null, 2)}\n`
    : sections.map((section) => section.out).join('');
  return ended(out, [...notes, ...faults], faults.length > 0 ? 1 : 0);
}

/** What the series and the levers asked for change, one by one. */
function tradedIn({ sweep, levers }: Request, { compiled }: Live): readonly string[] {
  return cellsOf(compiled.document).flatMap((cell) => {
    if (cell.kind === 'trial_series' && cell.name === sweep) return cell.axes.map(({ of }) => of);
    return cell.kind === 'what_helps' && cell.name === levers ? cell.rows.map(({ of }) => of) : [];
  });
}

function ended(out: string, lines: readonly string[], code: 0 | 1): Answer {
  return { out, err: lines.map((line) => `${line}\n`).join(''), code };
}

function sectionsOf(request: Request, live: Live, names: Names, library: Library): Section[] {
  const sections: Section[] = [];
  if (request.names) sections.push(listNames(names));
  if (request.spread.length > 0) return [...sections, typedSpread(request, live, names)];
  if (request.spreadCell !== '') {
    const { tolerances: spread } = studyKinds;
    return [...sections, studySection(spread, live, request.spreadCell, names, askedDesigns(request))];
  }
  if (request.get.length > 0) sections.push(readValues(request.get, live, names));
  if (request.sweep !== '') sections.push(studySection(studyKinds.trial_series, live, request.sweep, names));
  if (request.levers !== '') sections.push(studySection(studyKinds.what_helps, live, request.levers, names));
  if (request.mends !== '') sections.push(studySection(studyKinds.what_mends, live, request.mends, names));
  if (request.best !== '') sections.push(studySection(studyKinds.best_compromises, live, request.best, names));
  if (request.weighing !== '') sections.push(studySection(studyKinds.weighing, live, request.weighing, names));
  if (request.reconcile !== '') sections.push(tellReconciled(request.reconcile, live, names, library));
  if (request.variants !== '') sections.push(studySection(studyKinds.variants, live, request.variants, names));
  return sections.length > 0 ? sections : overview(live, names);
}

function listNames(names: Names): Section {
  const all = [...names.values()];
  return { out: all.map(nameLine).join(''), data: { names: all.map(nameData) }, faults: [] };
}

function readValues(paths: readonly string[], live: Live, names: Names): Section {
  const lines: string[] = [];
  const values: Record<string, unknown> = {};
  const faults: string[] = [];
  for (const path of paths) {
    const told = tellValue(live, names, path);
    if (typeof told === 'string') faults.push(told);
    else lines.push(`${path} = ${told.text}${told.from === undefined ? '' : `, taken from ${told.from}`}\n`);
    values[path] = typeof told === 'string' ? null : told;
  }
  return { out: lines.join(''), data: { values }, faults };
}

/** A study of the workbook, with other samples where that is asked for. */
function studySection<C extends StudyCell>(
  kind: Pick<StudyKind<C, unknown, unknown, unknown, unknown>, 'kind' | 'words' | 'command'>,
  live: Live,
  name: string,
  names: Names,
  asked: Partial<C> = {},
): Section {
  const cell = findStudy<C>(live, kind, name);
  if (typeof cell === 'string') return { out: '', data: {}, faults: [cell] };
  return kind.command({ ...cell, ...asked }, live, names);
}

function typedSpread(request: Request, live: Live, names: Names): Section {
  const wanted = request.get.length > 0 ? request.get : live.compiled.document.figures;
  const inputs: SpreadInput[] = [];
  const faults: string[] = [];
  for (const [path, text] of request.spread) {
    const read = readSpread(live, names, path, text);
    if (typeof read === 'string') faults.push(read);
    else inputs.push(read);
  }
  const unknown = wanted.filter((path) => !names.has(path));
  faults.push(
    ...unknown.map((path) => `Nothing is called ${path}.${meant(path, names.keys())} --names lists all names.`),
  );
  if (faults.length > 0) return { out: '', data: {}, faults };
  const { samples = USUAL_SAMPLES, seed = USUAL_SEED } = request;
  return spreadSection(
    live,
    planDesigns(live, { revision: 0, spread: '', inputs, correlations: [], wanted, samples, seed }),
    names,
  );
}

/** Other designs than the cell of a spread asks for. */
const askedDesigns = ({ samples, seed }: Request): Partial<SpreadCell> => ({
  ...(samples === undefined ? {} : { samples }),
  ...(seed === undefined ? {} : { seed }),
});

const USUAL_SAMPLES = 1000;
const USUAL_SEED = 1;

/** What stands on the page beside the drawing: key figures and checks; the fits to flown laps; and everything that is wrong. */
function overview(live: Live, names: Names): Section[] {
  const { document } = live.compiled;
  const figures = readValues(document.figures, live, names);
  const cells = cellsOf(document).filter((cell) => cell.kind === 'check');
  const told = cells.map((check) => ({ of: check.of, ...tellCheck(check, live, names) }));
  const broken = told.filter(({ stop }) => stop);
  const checks = [...told.map(({ of: _, ...check }) => check), ...tellBreaches(live, names, broken)];
  const fits = cellsOf(document).flatMap((cell) => (cell.kind === 'fit' ? [tellFit(cell, live, names)] : []));
  const untold = fits.flatMap(({ fault }) => fault ?? []);
  const others = faultsOfLive(live)
    .filter((fault) => fault.state === 'fault')
    .map(sentenceOf)
    .filter((sentence) => ![...figures.faults, ...untold].some((told) => told.includes(sentence)));
  return [
    figures,
    {
      out: checks.map((check) => check.line).join(''),
      data: { checks: checks.map(({ line: _, ...rest }) => rest) },
      faults: others,
    },
    {
      out: fits.map(({ text }) => text).join(''),
      data: fits.length === 0 ? {} : { fits: fits.map(({ data }) => data) },
      faults: untold,
    },
  ];
}
