import { AIRSPEED_KNOTS } from '../../blocks/curve';
import { nearestName } from '../../formula/index';
import type { Live } from '../../sheet/live';
import type { NameInfo } from '../../terms/index';
import { formatQuantity } from '../../units/index';
import { causeOf } from '../run/cause';

/** One value as it is printed: SI beside the text that the page shows. Null: nothing is known or typed there. */
export interface Told {
  readonly si: number | null | readonly (number | null)[];
  readonly text: string;
  /** Path of what stands in a blank field. */
  readonly from?: string;
}

/** By path; of two that share one (a field and the result that repeats it) what formulas read. */
export const namesByPath = ({ compiled }: Live): ReadonlyMap<string, NameInfo> =>
  new Map(compiled.names.map((name) => [name.path, name]));

/** What a name holds, or the sentence that says why it can't be said. */
export function tellValue(live: Live, names: ReadonlyMap<string, NameInfo>, path: string): Told | string {
  const info = names.get(path);
  if (!info) return `Nothing is called ${path}.${meant(path, names.keys())} --names lists all names.`;
  const cause = causeOf(live.compiled, live.state, info.slot);
  if (cause !== undefined) return `${path} has no answer. ${cause}`;
  const { m } = live.state;
  if (info.kind !== 'curve') {
    const from = info.takes === undefined ? {} : { from: info.takes };
    return { si: plain(m[info.slot]!), text: textOf(info, m[info.slot]!), ...from };
  }
  const knots = AIRSPEED_KNOTS.map((_, knot) => m[info.slot + knot]!);
  const first = AIRSPEED_KNOTS[0]!;
  const last = AIRSPEED_KNOTS.at(-1)!;
  const list = knots.map((value) => textOf(info, value)).join(', ');
  return { si: knots.map(plain), text: `${list} at ${knots.length} airspeeds from ${first} to ${last} m/s` };
}

/** The same text as the page shows; a choice by the name of its option. */
export function textOf(info: NameInfo, si: number): string {
  if (info.options) return info.options[si] ?? '–';
  return formatQuantity(si, info.unit, { suffix: info.suffix, ways: info.ways });
}

export const plain = (value: number): number | null => (Number.isFinite(value) ? value : null);

export function meant(path: string, among: Iterable<string>): string {
  const near = nearestName(path, [...among]);
  return near === undefined ? '' : ` Did you mean ${near}?`;
}
