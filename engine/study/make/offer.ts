import type { Live } from '../../sheet/live';
import type { Slot } from '../../sheet/program';
import { cellsOf } from '../../sheet/sheets';
import type { NameInfo } from '../../terms/index';
import { byEffect } from './by-effect';
import { followsFrom, restsOn } from './reach';
import type { ChartOffer } from './told';

/** What may run along an axis, the likeliest first: variables by what they do. */
const SET: readonly NameInfo['kind'][] = ['variable', 'choice', 'field', 'part'];
/** What may be drawn: key figures first, then what the model and the sums of the parts give, then the lines of formulas. */
const DRAWN: readonly NameInfo['kind'][] = ['result', 'fold', 'formula'];

/** What a chart of the number at a path can be drawn against, or which results follow from it. */
export function offerChart(of: string, live: Live): ChartOffer {
  const { document, program, names } = live.compiled;
  const info = names.find((each) => each.path === of);
  if (!info) return { ok: false, message: `Nothing of the design is called ${of}.` };
  const slot = (each: NameInfo): Slot => program.inputs.get(each.path) ?? each.slot;
  const kinds = new Map(cellsOf(document).map((cell) => [cell.id, cell.kind]));
  // Layers and columns of a choice are what it chooses among.
  const inChoice = ({ kind, cell }: NameInfo): boolean => kind !== 'choice' && kinds.get(cell) === 'choice';
  const isSet = (each: NameInfo): boolean =>
    each.settable && SET.includes(each.kind) && !inChoice(each) && hasValue(each, live);
  if (!info.settable) {
    const behind = restsOn(program, info.slot);
    const set = (each: NameInfo): boolean => isSet(each) && behind.has(slot(each));
    const variables = names.filter((each) => each.kind === 'variable' && set(each));
    const strongest = byEffect(variables, info.slot, live).map(({ path }) => path);
    const others = [...new Set([...strongest, ...inOrder(names, SET, set)])];
    if (others.length === 0) return { ok: false, message: `${info.title} follows from nothing that is set.` };
    return { ok: true, asks: 'against', others, lines: others };
  }
  const moved = followsFrom(program, slot(info));
  const drawn = (each: NameInfo): boolean =>
    !each.settable && !each.options && !(each.kind === 'formula' && each.detail) && moved.has(each.slot);
  const results = inOrder(names, DRAWN, drawn);
  const figures = document.figures.filter((path) => results.includes(path));
  const others = [...figures, ...results.filter((path) => !figures.includes(path))];
  if (others.length === 0) return { ok: false, message: `No result follows from ${info.title}.` };
  const lines = inOrder(names, SET, (each) => isSet(each) && each.path !== of);
  return { ok: true, asks: 'result', others, lines };
}

/** A formula's line may be typed, and still nothing but a number that stands there can slide. */
const hasValue = ({ options, path, slot }: NameInfo, { compiled: { program }, state }: Live): boolean =>
  options !== undefined || Number.isFinite(state.m[program.inputs.get(path) ?? slot]) || Number.isFinite(state.m[slot]);

const inOrder = (
  names: readonly NameInfo[],
  kinds: readonly NameInfo['kind'][],
  fits: (info: NameInfo) => boolean,
): readonly string[] => [
  ...new Set(kinds.flatMap((kind) => names.filter((info) => info.kind === kind && fits(info)).map(({ path }) => path))),
];
