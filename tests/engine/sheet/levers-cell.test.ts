import { describe, expect, it } from 'vitest';
import { withText } from '../../../engine/sheet/baseline';
import { compile } from '../../../engine/sheet/compile';
import { copyOfCell } from '../../../engine/sheet/copy';
import type { Cell, Document, LeverRow, LeversCell } from '../../../engine/sheet/document';
import { openText, serialise } from '../../../engine/sheet/file';
import { faultsOfLive, type Live, openLive, setLive } from '../../../engine/sheet/live';
import { textsOf } from '../../../engine/sheet/paths';
import { rename } from '../../../engine/sheet/rename';
import { cellsOf } from '../../../engine/sheet/sheets';
import { applyChange, applyChanges } from '../../../engine/sheet/transaction';
import { usesOf } from '../../../engine/sheet/uses';
import { onOneSheet } from './one-sheet';
import { library, smallDesign, variable, variables } from './small';

const row = (of: string, text: string, change: Partial<LeverRow> = {}): LeverRow => ({
  ...{ of, way: 'both', text },
  ...change,
});
const levers: LeversCell = {
  ...{ kind: 'what_helps', id: 'id_pulls', name: 'pulls', title: 'Pulls' },
  rows: [
    row('tip_weight', '0.1 × tip_weight'),
    row('cord.length', '20 m', { way: 'to' }),
    row('tail_stock', '', { options: ['faced'] }),
  ],
  ...{ wanted: ['lap.pull', 'parts.x'], rank: 'parts.x', per: 'lap.pull' },
};
const sheet = (change: Partial<LeversCell> = {}, more: readonly Cell[] = []): Document => {
  const document = smallDesign();
  return { ...document, sheets: onOneSheet([...cellsOf(document), ...more, { ...levers, ...change }]) };
};
const faults = (change: Partial<LeversCell>, more: readonly Cell[] = []): string[] =>
  compile(sheet(change, more), library).faults.map((fault) => `${fault.path}: ${fault.message}`);
const leversIn = (document: Document): LeversCell =>
  cellsOf(document).find((cell): cell is LeversCell => cell.kind === 'what_helps')!;

function renamed(path: string, to: string): LeversCell {
  const renaming = rename(sheet(), path, to);
  if (!renaming.ok) throw new Error(renaming.message);
  return leversIn(applyChanges(sheet(), renaming.changes).document);
}

describe('a cell of levers', () => {
  it('has what its rows are changed by as texts', () => {
    const own = textsOf(sheet()).filter(({ path }) => path.startsWith('pulls'));
    expect(own).toEqual([
      { path: 'pulls.row1.change', text: '0.1 × tip_weight' },
      { path: 'pulls.row2.change', text: '20 m' },
      { path: 'pulls.row3.change', text: '' },
    ]);
    expect(leversIn(withText(sheet(), 'pulls.row2.change', '19 m')!).rows[1]?.text).toBe('19 m');
  });

  it('is without fault as it stands, and lives through a file', () => {
    expect(faults({})).toEqual([]);
    const opened = openText(serialise(sheet()));
    expect(opened.ok && leversIn(opened.document)).toEqual(levers);
  });

  it('follows what is renamed, is found as a use, and is copied under another name', () => {
    expect(renamed('tip_weight', 'lead').rows[0]).toEqual(row('lead', '0.1 × lead'));
    expect(renamed('lap', 'flown')).toMatchObject({ wanted: ['flown.pull', 'parts.x'], per: 'flown.pull' });
    expect(renamed('tail_stock.faced', 'thin').rows[2]?.options).toEqual(['thin']);
    expect(usesOf(sheet(), 'tip_weight')).toContainEqual({ cell: 'id_pulls', path: 'pulls.row1.change' });
    expect(copyOfCell(sheet(), levers)).toMatchObject({ name: 'pulls_2', rows: levers.rows });
  });

  it('is put in and taken back', () => {
    const document = smallDesign();
    const { document: after, inverse } = applyChange(document, { change: 'insert', sheet: 's1', at: 0, cell: levers });
    expect(applyChange(after, inverse).document).toEqual(document);
  });

  const warm = variables('weather', variable('heat', '°C', '20 °C'));
  it('takes a step of temperature in K, and another temperature on its scale', () => {
    expect(faults({ rows: [row('heat', '2 K'), row('heat', '25 °C', { way: 'to' })] }, [warm])).toEqual([]);
  });

  it('says that an amount is missing as soon as it is taken out, and no longer when it is typed', () => {
    const set = (live: Live, text: string): Live => setLive(live, [['pulls.row1.change', text]], library).live;
    const bare = set(openLive(sheet(), library), '');
    const said = 'The tip_weight has no amount to be changed by. Type one, such as “2\u00a0g”.';
    expect(faultsOfLive(bare).map(({ path, message }) => [path, message])).toEqual([['pulls.row1.change', said]]);
    expect(faultsOfLive(set(bare, '3 g'))).toEqual([]);
  });

  it.each([
    [{ rows: [] }, 'pulls: Pulls has nothing to change. Add something to it.'],
    [{ wanted: [], rank: '', per: '' }, 'pulls: Pulls has no results to show. Add one under “Results asked for”.'],
    [
      { rank: 'lap.speed' },
      'pulls: Pulls ranks by the speed of lap, which is not among its results: the pull of lap, the CG station of parts.',
    ],
    [
      { rank: '', per: 'lap.pull' },
      'pulls: Pulls ranks by the change of the pull of lap for each change of the pull of lap. Take two different results.',
    ],
    [
      { rows: [row('tip_wieght', '1 g')] },
      'pulls: Pulls changes “tip_wieght”: nothing has that name. Did you mean the tip_weight?',
    ],
    [
      { rows: [row('lap.pull', '1 N')] },
      'pulls: Pulls changes the pull of lap. Only what is typed can be changed: a variable, a choice or something typed in the model. Make it a variable and change that.',
    ],
    [
      { rows: [row('reserve', '1')] },
      'pulls: Pulls changes reserve. Only what is typed can be changed: a variable, a choice or something typed in the model. Make it a variable and change that.',
    ],
    [
      { rows: [row('tail_stock', '', { options: ['steel'] })] },
      'pulls: Pulls changes Tail stock to “steel”. Its options are Soft, Faced.',
    ],
    [
      { rows: [row('tip_weight', '')] },
      'pulls.row1.change: The tip_weight has no amount to be changed by. Type one, such as “2\u00a0g”.',
    ],
    [
      { rows: [row('tip_weight', '', { way: 'to' })] },
      'pulls.row1.change: The tip_weight has no value to be changed to. Type one, such as “2\u00a0g”.',
    ],
    [
      { wanted: ['lap.pul'], rank: '', per: '' },
      'pulls: Pulls asks for “lap.pul”: nothing has that name. Did you mean the pull of lap?',
    ],
    [
      { wanted: ['motor.thrust'], rank: '', per: '' },
      'pulls: Pulls asks for the thrust of motor, which is a curve. Take a single number.',
    ],
    [
      { wanted: ['tail_stock'], rank: '', per: '' },
      'pulls: Pulls asks for Tail stock, which is one of a list. Take a number.',
    ],
  ] as [Partial<LeversCell>, string][])('%j is told of', (change, message) => {
    expect(faults(change)).toEqual([message]);
  });
});
