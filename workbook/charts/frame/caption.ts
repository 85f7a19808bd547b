import { formatQuantity, NOT_COMPUTED, type SweepProgress, toSI } from '../../../engine/index';
import type { DrawnPanel } from '../line/layout';
import { extent } from './extent';
import { type Family, type FamilyLine, type Panel, sampleAt } from './family';
import type { Zone } from './limits';
import { capital, inSentence, leftOut, listed } from './words';

/** A line's answers as SI pairs, in order across; gaps and samples not yet computed are left out. */
function answers(family: Family, panel: Panel, line: FamilyLine, progress: SweepProgress): { x: number; y: number }[] {
  if (!panel.column) return [];
  return line.samples.flatMap((sample, k) => {
    const y = sampleAt(progress, panel.column!, sample);
    return typeof y === 'number' ? [{ x: family.acrossValues[k]!, y }] : [];
  });
}

/** Slopes that lie within this share of their mean are one slope. */
const STRAIGHT = 0.06;

/** Change of a panel's quantity per SI unit across: one for the whole family where its lines are straight and alike, else beside the present design. */
function slopeOf(
  family: Family,
  panel: Panel,
  progress: SweepProgress,
  nowX: number | undefined,
): { slope: number; everywhere: boolean } | undefined {
  const slopes: number[] = [];
  for (const line of family.lines) {
    const points = answers(family, panel, line, progress);
    for (let k = 1; k < points.length; k++) {
      slopes.push((points[k]!.y - points[k - 1]!.y) / (points[k]!.x - points[k - 1]!.x));
    }
  }
  if (slopes.length === 0) return undefined;
  const mean = slopes.reduce((a, b) => a + b, 0) / slopes.length;
  const [least, most] = extent(slopes)!;
  if (most - least <= STRAIGHT * Math.abs(mean)) return { slope: mean, everywhere: true };

  const present = family.lines.find((line) => line.present);
  if (!present || nowX === undefined) return undefined;
  const points = answers(family, panel, present, progress);
  const after = points.findIndex((p) => p.x >= nowX);
  if (after < 0 || (after === 0 && points[0]!.x > nowX)) return undefined;
  const a = points[Math.max(0, after - 1)]!;
  const b = points[after === 0 ? 1 : after]!;
  return b === undefined || b.x === a.x ? undefined : { slope: (b.y - a.y) / (b.x - a.x), everywhere: false };
}

/** A round step across, about a quarter of the range, in the axis's unit; SI and as people read it. */
function stepAcross(family: Family): { si: number; text: string } | undefined {
  const { unit } = family.across.info;
  const low = family.across.shown(family.acrossValues[0]!);
  const high = family.across.shown(family.acrossValues.at(-1)!);
  const span = Math.abs(high - low);
  if (!(span > 0)) return undefined;
  const step = 10 ** Math.floor(Math.log10(span / 4) + 1e-9);
  const si = toSI(step, unit) - toSI(0, unit);
  return { si, text: formatQuantity(si, unit, { difference: true, suffix: family.across.info.suffix }) };
}

/** "Each 10 mm of engine station changes CG by +2.9 mm." */
export function slopeSentence(family: Family, progress: SweepProgress, nowX: number | undefined): string {
  const step = family.options ? undefined : stepAcross(family);
  if (!step) return '';
  const found = family.panels.flatMap((panel) => {
    const slope = slopeOf(family, panel, progress, nowX);
    return slope ? [{ panel, ...slope }] : [];
  });
  if (found.length === 0) return '';
  const changes = found.map(({ panel, slope }) => {
    const { unit, suffix, title } = panel.info;
    const change = formatQuantity(slope * step.si, unit, { significant: 2, sign: true, difference: true, suffix });
    return `${inSentence(title)} by ${change}`;
  });
  const where = found.every((f) => f.everywhere) ? 'Each' : 'Near the present design each';
  return `${where} ${step.text} of ${inSentence(family.across.info.title)} changes ${listed(changes)}.`;
}

/** "Line pull runs from 24.7 N to 26.9 N.": said of each panel where nothing better can be. */
export function spanSentence(family: Family, progress: SweepProgress): string {
  return family.panels
    .flatMap((panel) => {
      const values = family.lines.flatMap((line) => answers(family, panel, line, progress).map(({ y }) => y));
      if (values.length < 2) return [];
      const [low, high] = extent(values)!.map((value) => panel.text(value));
      return [
        low === high ? `${panel.info.title} is ${low} throughout.` : `${panel.info.title} runs from ${low} to ${high}.`,
      ];
    })
    .join(' ');
}

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

/** Says for each line where it keeps within the limits of the first panel that has any. */
export function limitSentence(family: Family, panels: readonly DrawnPanel[], progress: SweepProgress): string {
  const all = panels.flatMap((p) => [...p.zones.map((z) => z.zone), ...p.outside]);
  const limited = family.panels.find(({ path }) => path === all[0]?.of.path);
  if (!limited || family.options) return '';
  const zones = all.filter(({ of }) => of.path === limited.path);
  const limits = (side: 'below' | 'above'): number[] => zones.filter((z) => z.side === side).map((z) => z.limitSI);
  const low = Math.max(Number.NEGATIVE_INFINITY, ...limits('below'));
  const high = Math.min(Number.POSITIVE_INFINITY, ...limits('above'));
  const { info } = family.across;
  const text = (x: number): string => formatQuantity(x, info.unit, { suffix: info.suffix });
  const said = family.lines.flatMap((line) => {
    const points = answers(family, limited, line, progress);
    if (points.length < 2) return [];
    const ends = [family.acrossValues[0]!, family.acrossValues.at(-1)!] as const;
    return [{ label: line.label, where: whereWithin(points, low, high, text, ends) }];
  });
  if (said.length === 0) return '';
  const subject = `${capital(limited.info.title)} keeps within ${zones.length === 1 ? 'its limit' : 'its limits'}`;
  if (said.every((s) => s.where === said[0]!.where)) return `${subject} ${said[0]!.where}.`;
  return `${subject}: ${said.map((s) => `${s.label} ${s.where}`).join('; ')}.`;
}

/** The limits of a panel, drawn and not drawn. */
export interface Limited {
  readonly zones: readonly { readonly zone: Zone; readonly words: unknown }[];
  readonly outside: readonly Zone[];
}

/** Limits that the picture has no place for, and reasons that their zones have no room for. */
export function limitNotes(panels: readonly Limited[]): string[] {
  return panels.flatMap(({ zones, outside }) => {
    const limit = ({ side, limitSI, of: { title, unit, suffix } }: Zone): string =>
      `${title} ${side === 'below' ? 'at least' : 'at most'} ${formatQuantity(limitSI, unit, { suffix })}`;
    const because = (zone: Zone): string => (zone.reason === '' ? '' : `: ${zone.reason}`);
    return [
      ...outside.map((zone) => `Outside the picture: ${inSentence(limit(zone))}${because(zone)}.`),
      ...zones.filter((z) => !z.words && z.zone.reason !== '').map(({ zone }) => `${limit(zone)}${because(zone)}.`),
    ];
  });
}

/** Reasons that are named before the rest is only counted. */
const NAMED_REASONS = 2;

/** How many designs have no answer, and why. */
export function missingSentence(progress: SweepProgress): string {
  const counts = new Map<number, number>();
  let missing = 0;
  for (const why of progress.why) {
    if (why === 0 || why === NOT_COMPUTED) continue;
    missing++;
    counts.set(why, (counts.get(why) ?? 0) + 1);
  }
  if (missing === 0) return '';
  const bySentence = new Map<string, number>();
  for (const [why, n] of counts) {
    const sentence = progress.sentences[why - 1] ?? 'Reason unknown.';
    bySentence.set(sentence, (bySentence.get(sentence) ?? 0) + n);
  }
  const ordered = [...bySentence].sort((a, b) => b[1] - a[1]);
  const named = ordered
    .slice(0, NAMED_REASONS)
    .map(([sentence, n]) => (ordered.length === 1 ? sentence : `${n}: ${sentence}`));
  const rest = ordered.slice(NAMED_REASONS).reduce((sum, [, n]) => sum + n, 0);
  if (rest > 0) named.push(`${rest} for other reasons.`);
  return `${leftOut(missing, progress.total, 'designs')} ${named.join(' ')}`;
}
