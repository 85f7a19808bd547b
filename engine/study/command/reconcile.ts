import type { Live } from '../../sheet/live';
import { cellsOf } from '../../sheet/sheets';
import type { Library } from '../../sheet/specs';
import type { NameInfo } from '../../terms/index';
import { formatQuantity } from '../../units/index';
import type { Reconciliation } from '../design/culprit';
import { reconcile } from '../design/reconcile';
import type { Section } from '../kinds/kind';
import { plain, textOf } from './values';

type Names = ReadonlyMap<string, NameInfo>;

const STATES: Readonly<Record<Reconciliation['state'], string>> = {
  unmeasured: 'nothing is measured yet that tells the CG',
  agrees: 'the table agrees, within what is unsure',
  differs: 'the table differs by more than is unsure',
};

/** How the CG found stands to the table: the differences, what explains them, and what is often forgotten that would. */
export function tellReconciled(name: string, live: Live, names: Names, library: Library): Section {
  const pieces = cellsOf(live.compiled.document).flatMap((cell) =>
    cell.kind === 'model' && cell.of === 'found_cg' ? cell.name : [],
  );
  if (!pieces.includes(name)) {
    const there = pieces.length === 0 ? 'This design has none.' : `There is ${pieces.join(', ')}.`;
    return {
      out: '',
      data: {},
      faults: [`No piece that finds the CG is called “${name}”. ${there}`],
    };
  }
  const answer = reconcile(live, name, library);
  const at = (what: string): number => live.state.m[names.get(`${name}.${what}`)!.slot]!;
  const shown = (what: string): string => textOf(names.get(`${name}.${what}`)!, at(what));
  const unit = names.get(`${name}.x`)!.unit;
  const [mass, length] = [names.get(`${name}.mass`)!.unit, (value: number) => formatQuantity(value, unit)];
  const lines = [
    STATES[answer.state],
    ...(answer.state === 'unmeasured'
      ? []
      : [
          `CG found at ${shown('x')} ± ${shown('x_error')}, by the table ${shown('table_x')}: ${shown('difference_x')} ± ${shown('unsure_x')}`,
          `explained by ${shown('lacking_mass')} at ${shown('lacking_x')}`,
        ]),
    ...answer.culprits.map(
      ({ thing, explains, leftX }) =>
        `${formatQuantity(explains, '%')}: ${thing.part.title}, ${formatQuantity(thing.mass, mass)} at ${length(thing.x)}; leaves ${formatQuantity(leftX, unit, { difference: true, sign: true })}`,
    ),
  ];
  const culprits = answer.culprits.map(({ thing, explains, leftX }) => ({
    ...{ title: thing.part.title, mass: thing.mass, x: plain(thing.x), y: plain(thing.y) },
    ...{ explains, left: plain(leftX) },
  }));
  return {
    out: lines.map((line) => `${line}\n`).join(''),
    data: { reconciled: { state: answer.state, culprits } },
    faults: [],
  };
}
