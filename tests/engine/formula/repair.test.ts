import { describe, expect, test } from 'vitest';
import { checkFormula, type FormulaFault, parseFormula, type ValueType } from '../../../engine/formula/index';
import { unitNamed } from '../../../engine/units/index';
import { caseFiles } from './case-files';

const of = (unit: string): ValueType => ({ kind: 'quantity', dimension: unitNamed(unit)!.dimension });
const known: ReadonlyMap<string, ValueType> = new Map([
  ['lines.length', of('m')],
  ['lines.weight', of('N')],
  ['flight.pull', of('N')],
  ['tip_weight', of('g')],
  ['stock', { kind: 'option', options: ['balsa', 'ply'] }],
]);

function faultIn(text: string, wanted?: ValueType): FormulaFault | undefined {
  const read = parseFormula(text);
  if (!read.ok) return read.fault;
  const checked = checkFormula(
    read.expression,
    (name) => known.get(name),
    () => [...known.keys()],
    wanted,
  );
  return checked.ok ? undefined : checked.fault;
}

function repaired(text: string, wanted?: ValueType): string | undefined {
  const repair = faultIn(text, wanted)?.repair;
  return repair && text.slice(0, repair.from) + repair.text + text.slice(repair.to);
}

test.each<[text: string, repaired: string, wanted?: ValueType]>([
  ['2 × tip_wieght', '2 × tip_weight'],
  ['2 × flight.pul', '2 × flight.pull'],
  ['flight.pull − lines.length', 'flight.pull − lines.weight'],
  ['lines.length + flight.pull', 'lines.weight + flight.pull'],
  ['lines.length', 'lines.weight', of('N')],
  ['stock = bolsa ? 1 : 2', 'stock = balsa ? 1 : 2'],
  ['bolsa', 'balsa', { kind: 'option', options: ['balsa', 'ply'] }],
  ['sqr(4)', 'sqrt(4)'],
  ['3 Mm + 2 mm', '3 mm + 2 mm'],
  ['flight.pull ÷ 3/32 in', 'flight.pull ÷ (3/32 in)'],
  ['1 m < lines.length < 3 m', '1 m < lines.length and lines.length < 3 m'],
])('%s is mended to %s', (text, expected, wanted) => {
  expect(repaired(text, wanted)).toBe(expected);
  expect(faultIn(expected, wanted)).toBeUndefined();
});

test.each(['flight.pull + 3', '3 +', 'zzz', '3 m + 2 kg', 'log(3)'])('for %s nothing is offered', (text) => {
  expect(faultIn(text)).toBeDefined();
  expect(repaired(text)).toBeUndefined();
});

describe('whatever is offered', () => {
  const texts = ['reading', 'checking'].flatMap((folder) => caseFiles(folder).flatMap(({ cases }) => cases));
  test('lies in the text and takes the fault away from its place', () => {
    let offered = 0;
    for (const { text } of texts) {
      const fault = faultIn(text);
      const after = repaired(text);
      if (!fault?.repair || after === undefined) continue;
      offered++;
      expect(fault.repair.from).toBeGreaterThanOrEqual(0);
      expect(fault.repair.to).toBeLessThanOrEqual(text.length);
      expect(faultIn(after)?.message).not.toBe(fault.message);
    }
    expect(offered).toBeGreaterThan(3);
  });
});
