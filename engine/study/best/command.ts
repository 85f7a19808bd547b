import type { NameInfo } from '../../terms/index';
import { plain, textOf } from '../command/values';
import type { BestAnswer, TriedDesign } from './told';
import { noneSentences } from './words';

type Names = ReadonlyMap<string, NameInfo>;
type Answer = Omit<BestAnswer, 'revision'>;

/** "engine_station −150 mm, tail_stock light: parts.mass 812 g, flight.pull 5.2 N; flight.lap_time 3.10 s". */
export function bestTable(answer: Answer, names: Names): string {
  const { goals, tried, front, shown } = answer;
  const head = `Wanted: ${goals.map(({ of, way }) => `${way} ${of}`).join(', ')}\n`;
  if (front === 0) return `${head}${noneSentences(answer, (path) => names.get(path)?.title ?? path).join(' ')}\n`;
  const counts = `${tried} designs tried; of those that keep every limit none beats ${front === 1 ? 'this one' : `these ${front}`}`;
  const some = shown.length < front ? `, of which ${shown.length} are listed` : '';
  return `${head}${counts}${some}\n${shown.map((design) => lineOf(design, answer, names)).join('')}`;
}

function lineOf({ at, goals, others }: TriedDesign, answer: Answer, names: Names): string {
  const list = (paths: readonly string[], values: readonly number[]): string =>
    paths
      .map((path, k) => `${path} ${Number.isNaN(values[k]!) ? 'no answer' : textOf(names.get(path)!, values[k]!)}`)
      .join(', ');
  const more = answer.wanted.length === 0 ? '' : `; ${list(answer.wanted, others)}`;
  const wishes = answer.goals.map(({ of }) => of);
  return `${list(answer.axes, at)}: ${list(wishes, goals)}${more}\n`;
}

export const bestData = ({ best: _, state: __, message: ___, beaten: ____, shown, present, ...rest }: Answer) => ({
  ...rest,
  shown: shown.map(({ at, goals, others }) => ({ at, goals, others: others.map(plain) })),
  present: { ...present, goals: present.goals.map(plain) },
});
