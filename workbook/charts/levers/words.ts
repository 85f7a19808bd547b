import { leverEffect } from '../../../engine/index';
import type { BarLayout } from '../bars/layout';
import type { TableData } from '../frame/figures';
import type { Drawn } from '../frame/kind';
import type { SweepChartProps } from '../frame/props';
import { capital, inSentence, listed } from '../frame/words';
import { changeTitle, effectsIn, type LeverBars } from './layout';

const NAMED = 3;

/** "Line pull: line length does most, then guide station and tip weight. Wheel station does not move it." */
export function leverSentences({ panels, told }: LeverBars): string[] {
  return panels.map(({ info }, n) => {
    const { moves, still } = told[n]!;
    const title = capital(info.title.replace(/^Change of /, ''));
    const [first, ...rest] = moves.slice(0, NAMED).map(inSentence);
    const none =
      still.length === 0
        ? ''
        : ` ${capital(listed(still.map(inSentence)))} ${still.length === 1 ? 'does' : 'do'} not move it.`;
    if (first === undefined) return still.length === 0 ? '' : `${title}:${none}`;
    const then = rest.length === 0 ? '' : `, then ${listed(rest)}`;
    return `${title}: ${first} does most${then}.${none}`;
  });
}

type Levers = Drawn<SweepChartProps, LeverBars, BarLayout>;

/** Every change with what it does to each result, in the order of the rows. */
export function leverTable({ of: { progress, names, optionTitle }, data: { panels } }: Levers): TableData {
  return {
    head: [[{ text: 'Change' }, ...panels.map(({ info }) => ({ text: info.title }))]],
    rows: progress.levers!.changes.map((change, k) => ({
      head: changeTitle(change, names.get(change.path)!, optionTitle),
      cells: progress.wanted.map((path, w) => effectsIn(progress, w, names.get(path)!)(leverEffect(progress, w, k))),
    })),
  };
}
