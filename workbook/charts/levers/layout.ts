import {
  differenceFromSI,
  formatQuantity,
  type LeverChange,
  leverEffect,
  type NameInfo,
  NOT_COMPUTED,
  rankLevers,
  type SweepProgress,
} from '../../../engine/index';
import { type Names, quantityText } from '../../drawing/index';
import type { Bar, BarData, BarGroup, BarPanel } from '../bars/bars';
import { measure } from '../frame/measure';
import { capital, inSentence } from '../frame/words';

export type OptionTitle = (path: string, option: string) => string | undefined;

/** Styles that tell the way of a change apart, beside its words. */
const STYLES = { up: 0, down: 1, to: 2 } as const;

/** What a change is called where its thing is named beside it: "+5 mm", "to 70 °F", "to balsa–ply". */
function changeWords(change: LeverChange, info: NameInfo, optionTitle?: OptionTitle): string {
  const { from, to, way, path } = change;
  if (info.options) {
    const option = info.options[to] ?? '–';
    return `to ${optionTitle?.(path, option) ?? option.replaceAll('_', ' ')}`;
  }
  if (way === 'to') return `to ${quantityText(info, to)}`;
  return formatQuantity(to - from, info.unit, { suffix: info.suffix, difference: true, sign: true });
}

/** "Tip weight: +5 g". */
export const changeTitle = (change: LeverChange, info: NameInfo, optionTitle?: OptionTitle): string =>
  `${capital(info.title)}: ${changeWords(change, info, optionTitle)}`;

/** Digits of the greatest effect; the smaller ones have as many decimals, so that they compare at a glance. */
const DIGITS = 3;

/** Writes what changes do to one result: "+0.41 N"; to all of them with the same decimals. */
export function effectsIn(progress: SweepProgress, wanted: number, info: NameInfo): (si: number) => string {
  const all = progress.levers!.changes.map((_, k) => Math.abs(leverEffect(progress, wanted, k)));
  const most = differenceFromSI(Math.max(...all.filter(Number.isFinite), 0), info.unit);
  const decimals = most > 0 ? Math.max(0, DIGITS - 1 - Math.floor(Math.log10(most))) : 0;
  return (si) => formatQuantity(si, info.unit, { suffix: info.suffix, difference: true, sign: true, decimals });
}

export interface LeverBars extends BarData {
  /** Per panel: things that move it, the strongest first, and those that don't. */
  readonly told: readonly { readonly moves: readonly string[]; readonly still: readonly string[] }[];
}

/** Bars of what each change does to each result, both ways from nothing, the strongest lever first. */
export function barsOfLevers(progress: SweepProgress, names: Names, optionTitle?: OptionTitle): LeverBars {
  const { changes } = progress.levers!;
  const titles = changes.map(({ path }) => capital(names.get(path)?.title ?? path));
  const told: { moves: string[]; still: string[] }[] = [];
  const panels = progress.wanted.flatMap((path, w): BarPanel[] => {
    const info = names.get(path);
    if (!info) return [];
    const computed = rankLevers(progress, w).filter((k) => progress.why[k] !== NOT_COMPUTED);
    const effect = (k: number): number => leverEffect(progress, w, k);
    const text = effectsIn(progress, w, info);
    const groups = new Map<string, { label: string; bars: Bar[] }>();
    const moves = new Set<string>();
    const still = new Set<string>();
    for (const k of computed) {
      const { row, path: of } = changes[k]!;
      if (Number.isNaN(effect(k))) continue;
      if (effect(k) === 0) {
        still.add(titles[k]!);
        continue;
      }
      moves.add(titles[k]!);
      const words = changeWords(changes[k]!, names.get(of)!, optionTitle);
      // A step up and one down stand under one name; what something is changed to has a name of its own.
      const alone = changes[k]!.way === 'to';
      const key = alone ? `${row} ${of} ${k}` : `${row} ${of}`;
      const group = groups.get(key) ?? { label: alone ? `${titles[k]}: ${words}` : titles[k]!, bars: [] };
      const label = alone ? '' : words;
      group.bars.push({
        ...{ key: `${k}`, label, si: effect(k), style: STYLES[changes[k]!.way], present: false },
        text: alone ? text(effect(k)) : `${words}: ${text(effect(k))}`,
      });
      groups.set(key, group);
    }
    told.push({ moves: [...moves], still: [...still].filter((title) => !moves.has(title)) });
    return [
      {
        ...changeOf(info, text),
        groups: [...groups].map(([key, group]): BarGroup => ({ key, ...group, baseline: Number.NaN, opposed: true })),
      },
    ];
  });
  return { panels, of: 'Change', held: [], missing: 0, total: 0, told };
}

/** A change has no limits and no zero of its own, whatever is watched of the result. */
const changeOf = (info: NameInfo, text: BarPanel['text']): Omit<BarPanel, 'groups'> => {
  const title = `Change of ${inSentence(info.title)}`;
  const changed = { ...info, path: `${info.path}#change`, title };
  return {
    ...measure(changed),
    shown: (si) => differenceFromSI(si, info.unit),
    text,
  };
};
