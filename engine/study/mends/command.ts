import type { MendsCell } from '../../sheet/document';
import type { NameInfo } from '../../terms/index';
import { formatQuantity } from '../../units/index';
import { plain, textOf } from '../command/values';
import type { Mend, MendCost, MendsAnswer } from './told';

type Names = ReadonlyMap<string, NameInfo>;
type Answer = Omit<MendsAnswer, 'revision'>;

const COSTS: Readonly<Record<MendCost, string>> = {
  nothing: 'costs no weight',
  strength: 'useful strength',
  lighter: 'a lighter part',
  lead: 'lead',
  size: 'another size',
};

/** "costs no weight: engine_station from −150 mm to -158.2 mm: balance.cg_x 43.0 mm; parts.mass 0 g, flight.pull +0.2 N". */
export function mendsTable(cell: MendsCell, { now, wanted, met, found }: Answer, names: Names): string {
  const info = names.get(cell.of)!;
  const head = `${cell.of} is ${textOf(info, now)}, wanted ${WAYS[cell.way]}${textOf(info, wanted)}\n`;
  if (met) return `${head}It is there already.\n`;
  return (
    head +
    (found.length === 0
      ? 'Nothing in the design brings it nearer.\n'
      : found.map((mend) => lineOf(mend, cell, names)).join(''))
  );
}

const WAYS = { to: '', least: 'at least ', most: 'at most ' } as const;

function lineOf(mend: Mend, { of, wanted }: MendsCell, names: Names): string {
  const { path, cost, text, state, beyond, room, result, effects } = mend;
  const info = names.get(path);
  const ends = room === undefined ? '' : `, where ${room} leaves no more`;
  const by = info ? `, beyond its travel by ${formatQuantity(beyond, info.unit, { difference: true })}${ends}` : '';
  const reach = state === 'beyond' ? by : state === 'short' ? ', does not reach' : '';
  const others = wanted.map((each, w) => {
    const { unit, suffix } = names.get(each)!;
    const effect = effects[w]!;
    const said = Number.isNaN(effect)
      ? 'no answer'
      : formatQuantity(effect, unit, { suffix, difference: true, sign: true });
    return `${each} ${said}`;
  });
  return `${COSTS[cost]}: ${path} to ${text}${reach}: ${of} ${textOf(names.get(of)!, result)}${others.length > 0 ? `; ${others.join(', ')}` : ''}\n`;
}

export const mendsData = ({ now, wanted, met, found }: Answer) => ({
  ...{ now: plain(now), wanted: plain(wanted), met },
  found: found.map(({ effects, from, to, ...mend }) => ({
    ...mend,
    from: plain(from),
    to,
    effects: effects.map(plain),
  })),
});
