import {
  differenceFromSI,
  formatQuantity,
  type LeverChange,
  leverEffect,
  type NameInfo,
  rankLevers,
  type SweepProgress,
} from '../../engine/index';
import type { Names } from '../drawing/index';
import type { Bar, BarData, BarGroup, BarPanel } from './bars';
import { measure, NOT_COMPUTED } from './family';
import { capital, inSentence, listed } from './words';

export type OptionTitle = (path: string, option: string) => string | undefined;

/** Styles that tell the way of a change apart, beside its words. */
const STYLES = { up: 0, down: 1, to: 2 } as const;

/** What a change is called where its thing is named beside it: "+5 mm", "to 70 °F", "to balsa–ply". */
export function changeWords(change: LeverChange, info: NameInfo, optionTitle?: OptionTitle): string {
  const { from, to, way, path } = change;
  if (info.options) {
    const option = info.options[to] ?? '–';
    return `to ${optionTitle?.(path, option) ?? option.replaceAll('_', ' ')}`;
  }
  if (way === 'to') return `to ${formatQuantity(to, info.unit, { suffix: info.suffix })}`;
  return difference(to - from, info);
}

/** "+0.41 N". */
export const difference = (si: number, { unit, suffix }: NameInfo): string =>
  formatQuantity(si, unit, { suffix, difference: true, sign: true });

export interface LeverBars extends BarData {
  /** Per panel: things that move it, the strongest first, and those that don't. */
  readonly told: readonly { readonly moves: readonly string[]; readonly still: readonly string[] }[];
}

/** Bars of what each change does to each result, both ways from nothing, the strongest lever first. */
export function barsOfLevers(progress: SweepProgress, names: Names, optionTitle?: OptionTitle): LeverBars {
  const { changes } = progress.levers!;
  const titles = changes.map(({ path }) => names.get(path)?.title ?? path);
  const told: { moves: string[]; still: string[] }[] = [];
  const panels = progress.wanted.flatMap((path, w): BarPanel[] => {
    const info = names.get(path);
    if (!info) return [];
    const computed = rankLevers(progress, w).filter((k) => progress.why[k] !== NOT_COMPUTED);
    const effect = (k: number): number => leverEffect(progress, w, k);
    const groups = new Map<string, { label: string; bars: Bar[] }>();
    const still = new Set<string>();
    for (const k of computed) {
      const { row, path: of } = changes[k]!;
      if (Number.isNaN(effect(k))) continue;
      if (effect(k) === 0) {
        still.add(titles[k]!);
        continue;
      }
      const key = `${row} ${of}`;
      const group = groups.get(key) ?? { label: titles[k]!, bars: [] };
      group.bars.push(barOf(changes[k]!, k, effect(k), info, names, optionTitle));
      groups.set(key, group);
    }
    const moves = [...new Set([...groups.values()].map(({ label }) => label))];
    told.push({ moves, still: [...still].filter((title) => !moves.includes(title)) });
    return [
      {
        ...changeOf(info),
        groups: [...groups].map(([key, group]): BarGroup => ({ key, ...group, baseline: Number.NaN, opposed: true })),
      },
    ];
  });
  return { panels, of: 'Change', held: [], missing: 0, total: 0, told };
}

function barOf(
  change: LeverChange,
  k: number,
  si: number,
  info: NameInfo,
  names: Names,
  optionTitle: OptionTitle | undefined,
): Bar {
  const label = changeWords(change, names.get(change.path)!, optionTitle);
  const text = `${label}: ${difference(si, info)}`;
  return { key: `${k}`, label, si, text, style: STYLES[change.way], present: false };
}

/** A change has no limits and no zero of its own, whatever is watched of the result. */
const changeOf = (info: NameInfo): Omit<BarPanel, 'groups'> => {
  const title = `Change of ${inSentence(info.title)}`;
  const changed = { ...info, path: `${info.path}#change`, title };
  return {
    ...measure(changed),
    shown: (si) => differenceFromSI(si, info.unit),
    text: (si) => difference(si, info),
  };
};

const NAMED = 3;

/** "Line pull: the strongest is line length, then guide station and tip weight. Wheel station does not move it." */
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
    return `${title}: the strongest lever is ${first}${then}.${none}`;
  });
}
