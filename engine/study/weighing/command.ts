import type { NameInfo } from '../../terms/index';
import { formatQuantity } from '../../units/index';
import { plain } from '../command/values';
import type { WeighedPart, WeighingAnswer } from './told';

type Answer = Omit<WeighingAnswer, 'revision'>;

/** Units in which the table of these parts shows masses and stations. */
function unitsOf(parts: string, names: ReadonlyMap<string, NameInfo>) {
  const [mass, length] = [names.get(`${parts}.mass`)!.unit, names.get(`${parts}.x`)!.unit];
  return {
    mass: (value: number): string => formatQuantity(value, mass),
    at: (value: number): string => formatQuantity(value, length),
    apart: (value: number): string => formatQuantity(value, length, { difference: true }),
  };
}
type Units = ReturnType<typeof unitsOf>;

const percent = (share: number): string => formatQuantity(share, '%');

/** What the bench tells, a line each: how far it has come, where the CG lies, what the rest may weigh, every part, how it went. */
export function weighingTable(parts: string, answer: Answer, names: ReadonlyMap<string, NameInfo>): string {
  const units = unitsOf(parts, names);
  const { weighed, finished, wanted, within, done, next, history } = answer;
  const { apart, at, mass } = units;
  const target = Number.isNaN(wanted) ? '' : `, wanted ${at(wanted)}${within > 0 ? ` ± ${apart(within)}` : ''}`;
  const lines = [
    `CG when finished ${at(finished.x)} ± ${apart(finished.band)} (one standard deviation)${target}`,
    Number.isNaN(weighed.mass)
      ? 'nothing weighed yet'
      : `${percent(done)} weighed: ${mass(weighed.mass)} with its CG at ${at(weighed.x)}`,
    ...(answer.rest ? [`the rest, estimated ${mass(answer.rest.mass)}, ${mayWords(answer.rest.may, units)}`] : []),
    ...(next === '' ? ['every part is weighed'] : [`next on the scale: ${next}`]),
    ...answer.parts.map((part) => partLine(part, units)),
    ...history.map(({ path, x, band }) => `${path === '' ? 'before any' : `after ${path}`}: ${at(x)} ± ${apart(band)}`),
  ];
  return lines.map((line) => `${line}\n`).join('');
}

function mayWords(may: NonNullable<Answer['rest']>['may'], { mass }: Units): string {
  if (may.status === 'none') return 'can weigh nothing that brings the CG there';
  const { least, most } = may;
  if (most === Infinity) return least === 0 ? 'may weigh anything' : `may weigh ${mass(least)} or more`;
  const [low, high] = [mass(least), mass(most)];
  return `may weigh ${low === high ? low : `${low} to ${high}`}`;
}

function partLine({ path, state, mass, share, band, mayWeigh }: WeighedPart, units: Units): string {
  if (state === 'weighed') return `${path}: ${units.mass(mass)}, weighed`;
  const how = state === 'remade' ? 'estimated as re-made' : 'estimated';
  const may = Number.isNaN(mayWeigh) ? '' : `; by itself it may weigh ${units.mass(mayWeigh)}`;
  const takes = share > 0 ? `${percent(share)} of the band, to ± ${units.apart(band)}` : 'nothing of the band';
  return `${path}: ${units.mass(mass)}, ${how}; weighed it takes ${takes}${may}`;
}

export const weighingData = ({ parts, history, weighed, finished, rest, ...answer }: Answer) => ({
  ...{ state: answer.state, next: answer.next, done: plain(answer.done) },
  ...{ wanted: plain(answer.wanted), within: plain(answer.within) },
  weighed: { mass: plain(weighed.mass), x: plain(weighed.x), y: plain(weighed.y) },
  finished,
  ...(rest
    ? {
        rest: {
          mass: rest.mass,
          may:
            rest.may.status === 'none'
              ? rest.may
              : { ...rest.may, least: plain(rest.may.least), most: plain(rest.may.most) },
        },
      }
    : {}),
  parts: parts.map(({ share, band, mayWeigh, ...part }) => ({
    ...part,
    ...{ share: plain(share), band: plain(band), mayWeigh: plain(mayWeigh) },
  })),
  history,
});
