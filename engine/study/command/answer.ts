import type { Library } from '../../sheet/build';
import { openText } from '../../sheet/file';
import { faultsOfLive, type Live, openLive } from '../../sheet/live';
import type { NameInfo } from '../../terms/index';
import { sentenceOf } from '../cause';
import type { SweepPlan } from '../plan';
import { planSpread, runSpreadPlan, type SpreadInput } from '../spread';
import { planForSpread } from '../sweeps';
import type { Request } from './arguments';
import { tellCheck } from './checks';
import { tellFits } from './fit';
import { leversData, leversOf, leversTable } from './levers';
import { nameData, nameLine } from './names';
import { setTexts } from './set';
import { readSpread, spreadTable } from './spread';
import { sweepData, sweepOf, sweepTable } from './table';
import { meant, namesByPath, tellValue } from './values';

/** What the command prints, and what it ends with. */
export interface Answer {
  readonly out: string;
  /** Notes and faults, a sentence a line. */
  readonly err: string;
  readonly code: 0 | 1;
}

/** One of the things that were asked for: as text, as plain data, and what has no answer. */
interface Section {
  readonly out: string;
  readonly data: Readonly<Record<string, unknown>>;
  readonly faults: readonly string[];
}

type Names = ReadonlyMap<string, NameInfo>;

/** Answers one request about the text of a file. */
export function answer(request: Request, file: string, library: Library): Answer {
  const opened = openText(file);
  if (!opened.ok) {
    return ended('', [opened.message, ...opened.problems.slice(1).map((problem) => problem.message)], 1);
  }
  const set = setTexts(openLive(opened.document, library), request.set, library);
  if (!set.ok) return ended('', [...set.notes, ...set.faults], 1);
  const { live, notes } = set;
  const sections = sectionsOf(request, live, namesByPath(live));
  const faults = sections.flatMap((section) => section.faults);
  const data = Object.assign({}, ...sections.map((section) => section.data));
  const out = request.json
    ? `${JSON.stringify({ ...data, notes, faults }, null, 2)}\n`
    : sections.map((section) => section.out).join('');
  return ended(out, [...notes, ...faults], faults.length > 0 ? 1 : 0);
}

function ended(out: string, lines: readonly string[], code: 0 | 1): Answer {
  return { out, err: lines.map((line) => `${line}\n`).join(''), code };
}

function sectionsOf(request: Request, live: Live, names: Names): Section[] {
  const sections: Section[] = [];
  if (request.names) sections.push(listNames(names));
  if (request.spread.length > 0) return [...sections, spreadSection(request, live, names)];
  if (request.spreadCell !== '') return [...sections, spreadCellSection(request, live, names)];
  if (request.get.length > 0) sections.push(readValues(request.get, live, names));
  if (request.sweep !== '') sections.push(runSweep(request.sweep, live, names));
  if (request.levers !== '') sections.push(leversSection(request.levers, live, names));
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
    else lines.push(`${path} = ${told.text}\n`);
    values[path] = typeof told === 'string' ? null : told;
  }
  return { out: lines.join(''), data: { values }, faults };
}

function runSweep(name: string, live: Live, names: Names): Section {
  const sweep = sweepOf(live, name);
  if (typeof sweep === 'string') return { out: '', data: {}, faults: [sweep] };
  return { out: sweepTable(sweep, names), data: { sweep: sweepData(sweep, names) }, faults: [] };
}

function leversSection(name: string, live: Live, names: Names): Section {
  const levers = leversOf(live, name);
  if (typeof levers === 'string') return { out: '', data: {}, faults: [levers] };
  return { out: leversTable(levers, names), data: { levers: leversData(levers) }, faults: [] };
}

function spreadSection(request: Request, live: Live, names: Names): Section {
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
  return toldSection(live, planSpread(live, { revision: 0, spread: '', inputs, wanted, samples, seed }), names);
}

/** A spread of the workbook, with other designs where that is asked for. */
function spreadCellSection(request: Request, live: Live, names: Names): Section {
  const asked = {
    ...(request.samples === undefined ? {} : { samples: request.samples }),
    ...(request.seed === undefined ? {} : { seed: request.seed }),
  };
  const plan = planForSpread(live, 0, request.spreadCell, asked);
  return typeof plan === 'string' ? { out: '', data: {}, faults: [plan] } : toldSection(live, plan, names);
}

function toldSection(live: Live, plan: SweepPlan, names: Names): Section {
  const told = runSpreadPlan(live, plan);
  return { out: spreadTable(told, names), data: { spread: told }, faults: [] };
}

const USUAL_SAMPLES = 1000;
const USUAL_SEED = 1;

/** What stands on the page beside the drawing: key figures and checks; the fits to flown laps; and everything that is wrong. */
function overview(live: Live, names: Names): Section[] {
  const { document } = live.compiled;
  const figures = readValues(document.figures, live, names);
  const checks = document.cells.filter((cell) => cell.kind === 'check').map((check) => tellCheck(check, live, names));
  const fits = tellFits(live, names);
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
