import { type AnyBlock, isCurve, isLink, type Result } from '../blocks/block';
import { partsResults } from '../blocks/parts/results';
import { under } from './blocks';
import type { Chapter } from './chapter';
import { unitWords } from './quantities';

type Row = readonly [name: string, symbol: string, unit: string, title: string];

/** What a formula can say of the blocks: every number that a listing shows, on one page to search; the first block of a role speaks for it. */
export function namesChapter(blocks: readonly AnyBlock[]): Chapter {
  const roles = new Map<string, { readonly title: string; readonly rows: Map<string, Row> }>();
  for (const { kind, role = kind, title, fields, results } of blocks) {
    const { rows } = roles.get(role) ?? roles.set(role, { title, rows: new Map() }).get(role)!;
    for (const [name, spec] of Object.entries({ ...fields, ...results })) {
      if (isLink(spec) || isCurve(spec)) continue;
      const path = `${role}.${name}`;
      const unit = 'option' in spec ? 'one of a list' : unitWords(spec);
      if (!rows.has(path)) rows.set(path, [path, spec.symbol, unit, spec.title]);
    }
  }
  const parts = Object.entries<Result>(partsResults).map(([name, spec]): [string, Row] => [
    `parts.${name}`,
    [`parts.${name}`, spec.symbol, unitWords(spec), spec.title],
  ]);
  roles.set('parts', { title: 'Weight and balance', rows: new Map(parts) });
  return {
    id: 'names',
    group: 'Reading this',
    title: 'Names and symbols',
    pieces: [
      {
        kind: 'text',
        text: 'What formulas and the command line call each number, its symbol in the equations and the unit in which it is shown. A piece that was given another name is called by that.',
      },
      ...[...roles].flatMap(([role, { title, rows }]) =>
        under(`names.${role}`, title, [
          {
            kind: 'table',
            title: `Called ${role}. and a name`,
            columns: ['name', 'symbol', 'unit', 'meaning'],
            rows: [...rows.values()],
          },
        ]),
      ),
    ],
  };
}
