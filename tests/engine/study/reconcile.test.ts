import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { BlockCell, Document, PartsCell } from '../../../engine/sheet/document';
import { openText, serialise } from '../../../engine/sheet/file';
import { faultsOfLive, openLive } from '../../../engine/sheet/live';
import { cellsOf } from '../../../engine/sheet/sheets';
import { answer } from '../../../engine/study/command/answer';
import { readArguments } from '../../../engine/study/command/arguments';
import { reconcile } from '../../../engine/study/design/reconcile';
import { library } from '../../../engine/study/index';
import { writeQuantity } from '../../../engine/units/index';
import { onOneSheet } from '../sheet/one-sheet';

const opened = openText(readFileSync(new URL('../../designs/quern.tetherwright.json', import.meta.url), 'utf8'));
if (!opened.ok) throw new Error(opened.message);
const whole = opened.document;
const [hinges] = cellsOf(whole).flatMap((cell) =>
  cell.kind === 'parts' ? cell.rows.filter(({ name }) => name === 'hinges') : [],
);
const read = (document: Document, path: string): number => {
  const { compiled, state } = openLive(document, library);
  return state.m[compiled.program.slotOf.get(path)!]!;
};
/** The design with a CG that was found, and without some of its parts. */
function finding(fields: BlockCell['fields'], without: readonly string[] = [], name = 'found_cg'): Document {
  const piece: BlockCell = { kind: 'model', id: 'f1', name, title: 'Find the CG', of: 'found_cg', fields };
  const cells = cellsOf(whole).map((cell) =>
    cell.kind === 'parts'
      ? ({ ...cell, rows: cell.rows.filter((row) => !without.includes(row.name)) } satisfies PartsCell)
      : cell,
  );
  return { ...whole, sheets: onOneSheet([...cells, piece]) };
}
const asked = (document: Document, name = 'found_cg') => reconcile(openLive(document, library), name, library);
const mm = (value: number): string => writeQuantity(value, 'mm');
const dry = { x: read(whole, 'parts.x_empty'), mass: read(whole, 'parts.mass_empty') };

describe('what was found beside the table', () => {
  test('nothing until something is measured, and nothing of a piece that there is not', () => {
    expect(asked(finding({}))).toEqual({ state: 'unmeasured', differs: [], culprits: [] });
    expect(asked(finding({ finger: '40 mm' }), 'nobody').state).toBe('unmeasured');
  });
  test('agrees where it is the table’s own', () => {
    const document = finding({ finger: mm(dry.x), whole: writeQuantity(dry.mass, 'g') });
    expect(faultsOfLive(openLive(document, library))).toEqual([]);
    expect(asked(document)).toMatchObject({ state: 'agrees', differs: [], culprits: [] });
  });
  test('names which of station and weight differ', () => {
    expect(asked(finding({ finger: mm(dry.x + 0.05) })).differs).toEqual(['x']);
    expect(asked(finding({ finger: mm(dry.x), whole: writeQuantity(2 * dry.mass, 'g') })).differs).toEqual(['mass']);
    expect(asked(finding({ finger: mm(dry.x), tip_scale: '300 g' })).differs).toEqual(['y']);
  });
  test('finds a part again that is often forgotten and was taken out of the table', () => {
    expect(hinges).toBeDefined();
    const { culprits } = asked(finding({ finger: mm(dry.x), whole: writeQuantity(dry.mass, 'g') }, ['hinges']));
    expect(culprits.length).toBeLessThanOrEqual(3);
    expect(culprits.map(({ thing }) => thing.part.name)).toContain('elevator_hinges');
    const shares = culprits.map(({ explains }) => explains);
    expect(shares).toEqual(shares.toSorted((a, b) => b - a));
    expect(Math.max(...shares)).toBeLessThanOrEqual(1);
  });
  test('leaves the difference that is there once the thing is in the table', () => {
    const document = finding({ finger: mm(dry.x + 0.004) });
    for (const { thing, leftX } of asked(document).culprits) {
      const added: Document = {
        ...document,
        sheets: onOneSheet(
          cellsOf(document).map((cell) =>
            cell.kind === 'parts' ? { ...cell, rows: [...cell.rows, thing.part] } : cell,
          ),
        ),
      };
      expect(read(added, 'found_cg.difference_x'), thing.part.name).toBeCloseTo(leftX, 9);
    }
  });
});

test('the command line tells the same', () => {
  const request = readArguments(['design.json', '--reconcile', 'found_cg']);
  if (request.ask !== 'run') throw new Error('not read');
  const document = finding({ finger: mm(dry.x + 0.02), whole: writeQuantity(dry.mass + 0.03, 'g') });
  const { out, err } = answer(request.request, serialise(document), library);
  expect(err).toBe('');
  expect(out.replaceAll('\u00a0', ' ')).toMatchInlineSnapshot(`
    "the table differs by more than is unsure
    CG found at 69.3 mm ± 2 mm, by the table 49.3 mm: 20 mm aft ± 3.8 mm
    explained by 30.0 g missing at 619 mm
    14.4 %: Clevis, keepers and solder of the pushrod, 3 g at 448 mm; leaves +18.6 mm
    4.9 %: Pushrod guide, 2 g at 224 mm; leaves +19.6 mm
    3.8 %: Lettering, number and trim, 3 g at 115 mm; leaves +19.8 mm
    "
  `);
  const other = answer({ ...request.request, reconcile: 'found' }, serialise(document), library);
  expect(other).toMatchObject({
    code: 1,
    err: 'No piece that finds the CG is called “found”. There is found_cg.\n',
  });
});
