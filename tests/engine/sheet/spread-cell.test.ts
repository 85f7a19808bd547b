import { describe, expect, it } from 'vitest';
import { withText } from '../../../engine/sheet/baseline';
import { compile } from '../../../engine/sheet/compile';
import { copyOfCell } from '../../../engine/sheet/copy';
import type { Cell, ChartCell, Document, SpreadCell, SpreadRow } from '../../../engine/sheet/document';
import { openText, serialise } from '../../../engine/sheet/file';
import { textsOf } from '../../../engine/sheet/paths';
import { rename } from '../../../engine/sheet/rename';
import { cellsOf } from '../../../engine/sheet/sheets';
import { applyChange, applyChanges } from '../../../engine/sheet/transaction';
import { usesOf } from '../../../engine/sheet/uses';
import { onOneSheet } from './one-sheet';
import { library, smallDesign, variable, variables } from './small';

const row = (of: string, size: string, change: Partial<SpreadRow> = {}): SpreadRow => ({
  of,
  distribution: 'normal',
  size,
  above: '',
  ...change,
});
const spread: SpreadCell = {
  kind: 'tolerances',
  id: 'id_shop',
  name: 'shop',
  title: 'Shop',
  rows: [row('tip_weight', '0.1 × tip_weight'), row('cord.length', '2 cm'), row('parts.fin.mass', '')],
  parts: false,
  wanted: ['lap.pull', 'parts.x'],
  samples: 500,
  seed: 3,
};
const sheet = (change: Partial<SpreadCell> = {}, more: readonly Cell[] = []): Document => {
  const document = smallDesign();
  return { ...document, sheets: onOneSheet([...cellsOf(document), ...more, { ...spread, ...change }]) };
};
const faults = (change: Partial<SpreadCell>, more: readonly Cell[] = []): string[] =>
  compile(sheet(change, more), library).faults.map((fault) => `${fault.path}: ${fault.message}`);
const spreadIn = (document: Document): SpreadCell =>
  cellsOf(document).find((cell): cell is SpreadCell => cell.kind === 'tolerances')!;

function renamed(path: string, to: string): SpreadCell {
  const renaming = rename(sheet(), path, to);
  if (!renaming.ok) throw new Error(renaming.message);
  return spreadIn(applyChanges(sheet(), renaming.changes).document);
}

describe('a spread cell', () => {
  it('has the amounts of its rows as texts', () => {
    const document = sheet();
    const own = textsOf(document).filter(({ path }) => path.startsWith('shop'));
    expect(own.slice(0, 3)).toEqual([
      { path: 'shop.row1.size', text: '0.1 × tip_weight' },
      { path: 'shop.row1.above', text: '' },
      { path: 'shop.row2.size', text: '2 cm' },
    ]);
    expect(own).toHaveLength(6);
    expect(spreadIn(withText(document, 'shop.row2.above', '9 mm')!).rows[1]?.above).toBe('9 mm');
  });

  it('is without fault as it stands, and lives through a file', () => {
    expect(faults({})).toEqual([]);
    expect(faults({ rows: [], parts: true })).toEqual([]);
    const opened = openText(serialise(sheet()));
    expect(opened.ok && spreadIn(opened.document)).toEqual(spread);
  });

  it('follows what is renamed, is found as a use, and is copied under another name', () => {
    expect(renamed('tip_weight', 'lead').rows[0]).toEqual(row('lead', '0.1 × lead'));
    expect(renamed('parts.fin', 'rudder').rows[2]?.of).toBe('parts.rudder.mass');
    expect(renamed('lap', 'flown').wanted).toEqual(['flown.pull', 'parts.x']);
    expect(usesOf(sheet(), 'tip_weight')).toContainEqual({ cell: 'id_shop', path: 'shop.row1.size' });
    expect(copyOfCell(sheet(), spread)).toMatchObject({ name: 'shop_2', rows: spread.rows, seed: 3 });
  });

  it('is put in and taken back', () => {
    const document = smallDesign();
    const { document: after, inverse } = applyChange(document, { change: 'insert', sheet: 's1', at: 0, cell: spread });
    expect(applyChange(after, inverse).document).toEqual(document);
  });

  const warm = variables('weather', variable('heat', '°C', '20 °C'));
  it('takes how far a temperature may be off in K', () => {
    const names = compile(sheet({ rows: [row('heat', '2')] }, [warm]), library);
    const at = names.program.slotOf.get('shop.row1.size')!;
    expect(names.program.start[at]).toBe(2);
    expect(names.names.find(({ path }) => path === 'shop.row1.size')?.unit).toBe('K');
    expect(faults({ rows: [row('heat', '2 K')] }, [warm])).toEqual([]);
  });

  it.each([
    [{ rows: [] }, 'shop: Shop has nothing that differs. Add something to it, or take the uncertainty of the parts.'],
    [{ wanted: [] }, 'shop: Shop has no results to show. Add one under “Results asked for”.'],
    [{ samples: 5 }, 'shop: Shop asks for 5 designs. 10 to 1000000 are allowed.'],
    [{ seed: -1 }, 'shop: Shop asks for -1 as its seed. 0 to 1000000 are allowed.'],
    [
      { rows: [row('tip_wieght', '1 g')] },
      'shop: Shop lets “tip_wieght” differ: nothing has that name. Did you mean the tip_weight?',
    ],
    [
      { rows: [row('reserve', '1')] },
      'shop: Shop lets reserve differ. Only what is typed can: a variable, something typed in the model, or the mass or station of a part. Make it a variable and let that differ.',
    ],
    [
      { rows: [row('lap.pull', '1 N')] },
      'shop: Shop lets the pull of lap differ. Only what is typed can: a variable, something typed in the model, or the mass or station of a part. Make it a variable and let that differ.',
    ],
    [
      { rows: [row('cord.make', '1')] },
      'shop: Shop lets the make of cord differ, which is one of a list. Take a number.',
    ],
    [
      { rows: [row('tip_weight', '1 g'), row('tip_weight', '2 g')] },
      'shop: Shop has the tip_weight twice. Remove one of them.',
    ],
    [
      { rows: [row('tip_weight', '')] },
      'shop.row1.size: The tip_weight has no amount to differ by. Type one, such as “2\u00a0g”.',
    ],
    [
      { rows: [row('parts.fin.x', '', { distribution: 'uniform' })] },
      'shop.row1.size: The station of fin has no amount to differ by. Type one, such as “2\u00a0mm”; the uncertainty of the part itself is a standard deviation: for that take normal.',
    ],
    [{ wanted: ['lap.pul'] }, 'shop: Shop asks for “lap.pul”: nothing has that name. Did you mean the pull of lap?'],
    [{ wanted: ['motor.thrust'] }, 'shop: Shop asks for the thrust of motor, which is a curve. Take a single number.'],
    [{ wanted: ['tail_stock'] }, 'shop: Shop asks for Tail stock, which is one of a list. Take a number.'],
  ] as [Partial<SpreadCell>, string][])('%j is told of', (change, message) => {
    expect(faults(change)).toEqual([message]);
  });
  it('refuses a point on a scale as an amount', () => {
    expect(faults({ rows: [row('heat', '2 °C')] }, [warm])).toEqual([
      'shop.row1.size: 2\u00a0°C is a point on a scale. How far the heat may be off is written in K: “2\u00a0K”.',
    ]);
  });
});

describe('a chart of a spread', () => {
  const chart = (change: Partial<ChartCell>): string[] => {
    const cell: Cell = {
      ...{ kind: 'chart', id: 'id_c', name: 'c', title: 'C', chart: 'histogram', series: 'shop' },
      ...{ across: '', up: ['lap.pull'], lines: '' },
      ...change,
    };
    return compile(sheet({}, [cell]), library).faults.map(({ message }) => message);
  };
  it('shows its results and, in histograms and scatters, what differs', () => {
    expect(chart({})).toEqual([]);
    expect(chart({ chart: 'scatter', across: 'tip_weight' })).toEqual([]);
    expect(chart({ chart: 'shares' })).toEqual([]);
  });
  it.each([
    [{ chart: 'shares', series: '' }, 'C has no tolerances to show. The tolerances are Shop.'],
    [
      { series: 'shap' },
      'C shows the trial series “shap”: there is nothing of that name. The trial series are CG. The tolerances are Shop. Did you mean Shop?',
    ],
    [
      { chart: 'shares', up: ['tip_weight'] },
      'C shows the tip_weight, which Shop does not compute. It computes the pull of lap, the CG station of parts.',
    ],
    [
      { up: ['lap.speed'] },
      'C shows the speed of lap, which Shop does not compute. It computes the pull of lap, the CG station of parts, the tip_weight, the length of cord, the fin of parts.',
    ],
    [
      { chart: 'scatter', across: 'tip_weight', lines: 'tail_stock' },
      'C has a sign for each Tail stock, and Shop has no axes. Take nothing for the signs.',
    ],
    [
      { chart: 'line', across: 'tip_weight' },
      'C shows the trial series “shop”: there is nothing of that name. The trial series are CG.',
    ],
  ] as [Partial<ChartCell>, string][])('%j is told of', (change, message) => {
    expect(chart(change)).toEqual([message]);
  });
});
