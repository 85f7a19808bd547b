import { formatQuantity, type NameInfo, type SweepProgress, toSI, withWay } from '../../../engine/index';
import { extent } from './extent';
import { answersOf, type Family, type Panel } from './family';
import { inSentence, listed } from './words';

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
    const points = answersOf(family, panel, line, progress);
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
  const points = answersOf(family, panel, present, progress);
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

/** "If engine station goes up by 10 mm, CG rises by 2.9 mm." */
export function slopeSentence(family: Family, progress: SweepProgress, nowX: number | undefined): string {
  const step = family.options ? undefined : stepAcross(family);
  if (!step) return '';
  const found = family.panels.flatMap((panel) => {
    const slope = slopeOf(family, panel, progress, nowX);
    return slope ? [{ panel, ...slope }] : [];
  });
  if (found.length === 0) return '';
  const changes = found.map(({ panel, slope }) => {
    return `${inSentence(panel.info.title)} ${changeWords(panel.info, slope * step.si)}`;
  });
  const where = found.every((f) => f.everywhere) ? 'If' : 'Near the present design, if';
  return `${where} ${inSentence(family.across.info.title)} goes up by ${step.text}, ${listed(changes)}.`;
}

/** "rises by 2.9 mm", "changes by 0.2° out", "stays as it is". */
function changeWords({ unit, suffix, ways }: NameInfo, change: number): string {
  const size = formatQuantity(Math.abs(change), unit, { significant: 2, difference: true, suffix });
  if (!/[1-9∞]/.test(size)) return 'stays as it is';
  if (ways) return `changes by ${withWay(size, change, ways)}`;
  return `${change < 0 ? 'falls' : 'rises'} by ${size}`;
}

/** "Line pull runs from 24.7 N to 26.9 N.": said of each panel where nothing better can be. */
export function spanSentence(family: Family, progress: SweepProgress): string {
  return family.panels
    .flatMap((panel) => {
      const values = family.lines.flatMap((line) => answersOf(family, panel, line, progress).map(({ y }) => y));
      if (values.length < 2) return [];
      const [low, high] = extent(values)!.map((value) => panel.text(value));
      return [
        low === high ? `${panel.info.title} is ${low} throughout.` : `${panel.info.title} runs from ${low} to ${high}.`,
      ];
    })
    .join(' ');
}
