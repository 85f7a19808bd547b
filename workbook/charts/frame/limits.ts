import type { CheckCell, NameInfo } from '../../../engine/index';
import { limitText, type Names, valueAt } from '../../drawing/index';
import type { Measure } from './measure';
import { inSentence } from './words';

/** A range that a check forbids on a panel, in the panel's own numbers. */
export interface Zone {
  readonly side: 'below' | 'above';
  readonly limit: number;
  /** SI. */
  readonly limitSI: number;
  readonly reason: string;
  /** Not of a check: what the result itself may not come under. */
  readonly own?: true;
  /** What it limits. */
  readonly of: Pick<NameInfo, 'path' | 'title' | 'unit' | 'suffix' | 'ways'>;
}

/** What is wrong beyond a limit, in the few words that a zone has room for: "Stop if the CG is ahead of 38 mm: nose-heavy." is "nose-heavy". */
export function reasonInBrief(text: string): string {
  const brief = /^stop if [^:]*:\s*(.+)$/i.exec(text.trim())?.[1] ?? text.trim();
  return brief.replace(/\.$/, '');
}

/** Zones of all checks on a panel's path, and of what its result may not come under at all, unless a check stops before. */
export function zonesOf(panel: Measure, checks: readonly CheckCell[], names: Names, values: Float64Array): Zone[] {
  const zones = checkZones(panel, checks, names, values);
  const { least } = panel.info;
  if (!least || zones.some(({ side, limitSI }) => side === 'below' && limitSI >= least.at)) return zones;
  const { at: limitSI, because: reason } = least;
  return [...zones, { side: 'below', limitSI, limit: panel.shown(limitSI), reason, own: true, of: panel.info }];
}

/** Zones of checks alone. A limit that has no value forbids nothing yet. */
export function checkZones(panel: Measure, checks: readonly CheckCell[], names: Names, values: Float64Array): Zone[] {
  const zones: Zone[] = [];
  for (const check of checks) {
    if (check.of.trim() !== panel.path) continue;
    for (const [side, text, path, reason] of [
      ['below', check.low, `${check.name}.low`, check.below],
      ['above', check.high, `${check.name}.high`, check.above],
    ] as const) {
      const limitSI = text === '' ? undefined : valueAt(path, names, values);
      if (limitSI !== undefined)
        zones.push({ side, limitSI, limit: panel.shown(limitSI), reason: reasonInBrief(reason), of: panel.info });
    }
  }
  return zones;
}

const withReason = (said: string, { reason }: Zone): string => (reason === '' ? said : `${said}: ${reason}`);

/** "under 38 mm: nose-heavy", as a limit is written into a plot whose title says of what. */
export const limitWords = (zone: Zone): string => withReason(passing(zone), zone);

/** "CG under 38 mm: nose-heavy", where several quantities share a plot. */
export const namedLimitWords = (zone: Zone): string => withReason(`${zone.of.title} ${passing(zone)}`, zone);

const passing = ({ side, limitSI, of }: Zone): string =>
  `${side === 'below' ? 'under' : 'over'} ${limitText(of, limitSI)}`;

const passes = ({ side, limit }: Zone, shown: number): boolean => (side === 'below' ? shown < limit : shown > limit);
const withComma = (said: string, { reason }: Zone): string => (reason === '' ? said : `${said}, ${reason}`);

/** Said of every limit that a number of its axis has passed. */
export const passedWords = (zones: readonly Zone[], shown: number): string[] =>
  zones.filter((zone) => passes(zone, shown)).map((zone) => `Limit passed: ${withComma(passing(zone), zone)}`);

/** The same with what is limited. */
export const passedNamed = (zone: Zone, shown: number): string[] =>
  passes(zone, shown) ? [`Limit passed: ${withComma(`${inSentence(zone.of.title)} ${passing(zone)}`, zone)}`] : [];
