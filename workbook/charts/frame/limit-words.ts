import type { SweepProgress } from '../../../engine/index';
import { quantityText } from '../../drawing/index';
import { answersOf, type Family, type FamilyLine, type Panel } from './family';
import { namedLimitWords, type Zone, zonesOf } from './limits';
import type { SweepChartProps } from './props';
import { capital, inSentence, listed } from './words';
import type { DrawnZone } from './zones';

interface Stretch {
  from: number;
  to: number;
}

/** Where along `across` a line keeps within a panel's limits; crossings between samples by straight lines. */
function stretchesWithin(points: readonly { x: number; y: number }[], low: number, high: number): Stretch[] {
  const stretches: Stretch[] = [];
  const add = (from: number, to: number): void => {
    const last = stretches.at(-1);
    if (last && last.to === from) last.to = to;
    else stretches.push({ from, to });
  };
  for (let k = 1; k < points.length; k++) {
    const a = points[k - 1]!;
    const b = points[k]!;
    const at = (limit: number): number => (limit - a.y) / (b.y - a.y);
    let from = 0;
    let to = 1;
    const rising = b.y >= a.y;
    const entry = rising ? low : high;
    const exit = rising ? high : low;
    if (rising ? a.y < entry : a.y > entry) from = b.y === a.y ? 2 : at(entry);
    if (rising ? b.y > exit : b.y < exit) to = b.y === a.y ? -1 : at(exit);
    if (from <= 1 && to >= 0 && from < to) {
      add(from === 0 ? a.x : a.x + from * (b.x - a.x), to === 1 ? b.x : a.x + to * (b.x - a.x));
    }
  }
  return stretches;
}

/** Where along its axis a line keeps within its limits: "everywhere", "up to 38 mm", "from 12 s to 15 s", "nowhere". */
export function whereWithin(
  points: readonly { x: number; y: number }[],
  low: number,
  high: number,
  text: (x: number) => string,
  [first, last]: readonly [number, number] = [points[0]!.x, points.at(-1)!.x],
): string {
  const where = stretchesWithin(points, low, high).map(({ from, to }) =>
    from === first && to === last
      ? 'everywhere'
      : from === first
        ? `up to ${text(to)}`
        : to === last
          ? `from ${text(from)}`
          : `from ${text(from)} to ${text(to)}`,
  );
  return where.length === 0 ? 'nowhere' : listed(where);
}

/** The least and the greatest that all limits together allow, SI. */
export function allowed(zones: readonly Zone[]): readonly [low: number, high: number] {
  const limits = (side: Zone['side']): number[] => zones.filter((z) => z.side === side).map((z) => z.limitSI);
  return [
    Math.max(Number.NEGATIVE_INFINITY, ...limits('below')),
    Math.min(Number.POSITIVE_INFINITY, ...limits('above')),
  ];
}

/** "CG in limits: with balsa from −168 mm; with light ply up to −132 mm.", for every quantity with a limit. */
export function limitSentences(family: Family, { progress, checks, names, values }: SweepChartProps): string[] {
  return family.panels.flatMap((panel) => {
    const zones = zonesOf(panel, checks, names, values);
    const [low, high] = allowed(zones);
    const said =
      zones.length === 0 ? [] : family.lines.flatMap((line) => inLimits(family, panel, line, progress, [low, high]));
    if (said.length === 0) return [];
    // What a result may not come under at all is worth a word where it does.
    if (zones.every(({ own }) => own) && said.every(({ where }) => where === 'everywhere')) return [];
    const subject = `${capital(panel.info.title)} in ${zones.length === 1 ? 'its limit' : 'limits'}`;
    if (said.every((s) => s.where === said[0]!.where)) return [`${subject} ${said[0]!.where}.`];
    return [`${subject}: ${said.map(({ label, where }) => `with ${label} ${where}`).join('; ')}.`];
  });
}

/** Where along the axis a line keeps within its limits, or with which of the options. */
export function inLimits(
  family: Family,
  panel: Panel,
  line: FamilyLine,
  progress: SweepProgress,
  [low, high]: readonly [number, number],
): { label: string; where: string }[] {
  const points = answersOf(family, panel, line, progress);
  if (family.options) {
    const kept = points.filter(({ y }) => y >= low && y <= high).map(({ x }) => family.options![x] ?? '');
    if (points.length === 0) return [];
    const where = kept.length === points.length ? 'everywhere' : kept.length === 0 ? 'nowhere' : `with ${listed(kept)}`;
    return [{ label: line.label, where }];
  }
  if (points.length < 2) return [];
  const { info } = family.across;
  const text = (x: number): string => quantityText(info, x);
  const ends = [family.acrossValues[0]!, family.acrossValues.at(-1)!] as const;
  return [{ label: line.label, where: whereWithin(points, low, high, text, ends) }];
}

/** The limits of a panel, drawn and not drawn. */
export interface Limited {
  readonly zones: readonly DrawnZone[];
  readonly outside: readonly Zone[];
}

/** Limits that the picture has no place for, and those whose words have no room in it. */
export function limitNotes(panels: readonly Limited[]): string[] {
  return panels.flatMap(({ zones, outside }) => {
    return [
      ...outside.filter(({ own }) => !own).map((zone) => `Outside the picture: ${inSentence(namedLimitWords(zone))}.`),
      ...zones.filter((z) => !z.words).map(({ zone }) => `${capital(namedLimitWords(zone))}.`),
    ];
  });
}
