import { LINE_MAKES, lineKinds } from './tables/line-kinds';
import { wire } from './tables/wire';

/** Diameter (m) and least strength (Pa) of music wire. */
export const musicWireRows: readonly (readonly [number, number])[] = wire.rows
  .filter(({ words }) => words.group === 'music wire')
  .map(({ values }) => [values.diameter!, values.strength!]);

/** Diameter (m) and rated breaking load (N) of the lines of a kind; of solid wire, those of the wire table, which has more sizes. */
export function ratedLoads(kind: string): readonly (readonly [number, number])[] {
  const rows =
    kind === 'solid_steel'
      ? wire.rows.filter(({ words }) => words.group === 'music wire')
      : lineKinds.rows.filter(({ values }) => LINE_MAKES[values.kind!] === kind);
  return rows.map(({ values }) => [values.diameter!, values.breaking_load!]);
}
