import type { CheckCell, NameInfo } from '../../../engine/index';
import { type Names, valueAt } from '../../drawing/index';
import type { Measure } from './measure';

/** A range that a check forbids on a panel, in the panel's own numbers. */
export interface Zone {
  readonly side: 'below' | 'above';
  readonly limit: number;
  /** SI. */
  readonly limitSI: number;
  readonly reason: string;
  /** What it limits. */
  readonly of: Pick<NameInfo, 'path' | 'title' | 'unit' | 'suffix'>;
}

/** What is wrong beyond a limit, in the few words that a zone has room for: "Stop if the CG is ahead of 38 mm: nose-heavy." is "nose-heavy". */
export function reasonInBrief(text: string): string {
  const brief = /^stop if [^:]*:\s*(.+)$/i.exec(text.trim())?.[1] ?? text.trim();
  return brief.replace(/\.$/, '');
}

/** Zones of all checks on a panel's path. A limit that has no value forbids nothing yet. */
export function zonesOf(panel: Measure, checks: readonly CheckCell[], names: Names, values: Float64Array): Zone[] {
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
