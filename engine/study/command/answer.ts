import type { NameInfo } from '../../protocol';
import type { Library } from '../../sheet/build';
import type { CheckCell } from '../../sheet/document';
import { openText } from '../../sheet/file';
import { faultsOfLive, type Live, openLive } from '../../sheet/live';
import type { Request } from './arguments';
import { setTexts } from './set';
import { sweepData, sweepOf, sweepTable } from './table';
import { namesByPath, type Told, tellValue, textOf } from './values';

/** What the command prints, and what it ends with. */
export interface Answer {
  readonly out: string;
  /** Notes and faults, a sentence a line. */
  readonly err: string;
  readonly code: 0 | 1;
}

/** Answers one request about the text of a file. */
export function answer(request: Request, file: string, library: Library): Answer {
  const opened = openText(file);
  if (!opened.ok) {
    return ended('', [opened.message, ...opened.problems.slice(1).map((problem) => problem.message)], 1);
  }
  const set = setTexts(openLive(opened.document, library), request.set, library);
  if (!set.ok) return ended('', [...set.notes, ...set.faults], 1);
  const { live, notes } = set;
  const names = namesByPath(live);
  const faults: string[] = [];
  const read = (path: string): Told | undefined => {
    const told = tellValue(live, names, path);
    if (typeof told !== 'string') return told;
    faults.push(told);
    return undefined;
  };
  const out: string[] = [];
  const data: Record<string, unknown> = {};

  if (request.names) {
    data.names = [...names.values()].map(nameData);
    out.push([...names.values()].map(nameLine).join(''));
  }
  const asked = request.get.length > 0 || request.names || request.sweep !== '';
  const paths = asked ? request.get : live.compiled.document.figures;
  const values = paths.map((path) => [path, read(path)] as const);
  if (paths.length > 0) data.values = Object.fromEntries(values.map(([path, told]) => [path, told ?? null]));
  for (const [path, told] of values) if (told) out.push(`${path} = ${told.text}\n`);
  if (!asked) {
    const checks = live.compiled.document.cells.filter((cell) => cell.kind === 'check');
    data.checks = checks.map((cell) => ({
      name: cell.name,
      title: cell.title,
      stop: stopOf(cell, live, names) ?? null,
    }));
    for (const cell of checks) out.push(checkLine(cell, live, names));
    for (const fault of faultsOfLive(live)) {
      if (fault.state === 'fault' && !faults.some((each) => each.includes(fault.message))) faults.push(fault.message);
    }
  }
  if (request.sweep !== '') {
    const sweep = sweepOf(live, request.sweep);
    if (typeof sweep === 'string') faults.push(sweep);
    else {
      data.sweep = sweepData(sweep, names);
      out.push(sweepTable(sweep, names));
    }
  }
  const printed = request.json ? `${JSON.stringify({ ...data, notes, faults }, null, 2)}\n` : out.join('');
  return ended(printed, [...notes, ...faults], faults.length > 0 ? 1 : 0);
}

const ended = (out: string, lines: readonly string[], code: 0 | 1): Answer => ({
  out,
  err: lines.map((line) => `${line}\n`).join(''),
  code,
});

function nameLine({ path, kind, unit, suffix, title, doc, options }: NameInfo): string {
  const what = options ? `one of ${options.join(', ')}` : suffix || unit || 'plain number';
  return `${path}\t${what}\t${kind}\t${[title, doc].filter(Boolean).join(': ')}\n`;
}

const nameData = ({ path, kind, unit, suffix, title, doc, options, settable }: NameInfo) => ({
  name: path,
  kind,
  unit: suffix || unit,
  title,
  doc,
  settable,
  ...(options ? { options } : {}),
});

/** What is wrong with what a check watches; undefined where it is within its limits, '' where it has no answer. */
function stopOf(
  { name, below, above }: CheckCell,
  live: Live,
  names: ReadonlyMap<string, NameInfo>,
): string | undefined {
  const at = (path: string): number => live.state.m[names.get(path)?.slot ?? -1] ?? Number.NaN;
  const value = at(name);
  if (Number.isNaN(value)) return '';
  if (value < at(`${name}.low`)) return below;
  if (value > at(`${name}.high`)) return above;
  return undefined;
}

function checkLine(cell: CheckCell, live: Live, names: ReadonlyMap<string, NameInfo>): string {
  const stop = stopOf(cell, live, names);
  if (stop === '') return `? ${cell.title}: no answer\n`;
  const info = names.get(cell.name);
  const value = info ? textOf(info, live.state.m[info.slot]!) : '–';
  return stop === undefined ? `✓ ${cell.title}: ${value}\n` : `✕ ${cell.title}: ${value}. ${stop}\n`;
}
