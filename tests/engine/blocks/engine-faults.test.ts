import { describe, expect, it } from 'vitest';
import { faultsOfLive, openLive } from '../../../engine/sheet/live';
import { cellsOf } from '../../../engine/sheet/sheets';
import { library } from '../../../engine/study/index';
import { onOneSheet } from '../sheet/one-sheet';
import { block, type Fields, faults, openWith, withEngine } from './engine-designs';

describe('what goes wrong is said', () => {
  const said = (...rest: Parameters<typeof withEngine>) =>
    faultsOfLive(openWith(...rest))
      .filter((fault) => fault.path === 'engine' || fault.path === 'propeller')
      .map((fault) => fault.message)
      .filter((message) => !message.includes(' waits for '));
  const large = block('propeller', 'propeller', { diameter: '16 in', pitch: '12 in' });
  const small = block('propeller', 'propeller', { diameter: '5 in', pitch: '3 in' });
  it('when the propeller is too large or too small', () => {
    expect(said('two_stroke', {}, large)).toEqual([
      'The propeller (406\u00a0mm × 305\u00a0mm) is too large for the engine: it asks for more torque than there is at any rpm at which the engine runs. A smaller diameter or a finer pitch would do.',
    ]);
    expect(said('two_stroke', {}, small)[0]).toMatch(
      /^The propeller \(127\u00a0mm × 76\.2\u00a0mm\) is too small for the engine: at rest it would run at 2\d\u202f\d{3}\u00a0rpm, far beyond its peak of power at 13\u202f500\u00a0rpm\. A larger diameter or a coarser pitch would do\.$/,
    );
  });
  it('when the data of the engine do not agree', () => {
    expect(said('two_stroke', { power_speed: '9000 rpm' })).toEqual([
      'Peak power must come at more rpm than peak torque: it is at 9000\u00a0rpm, and peak torque at 9500\u00a0rpm. Look at both again.',
    ]);
    expect(said('two_stroke', { peak_power: '400 W' })).toEqual([
      'The two peaks do not go together: 400\u00a0W at 13\u202f500\u00a0rpm is more torque than the peak of 0.25\u00a0N·m. Look at all four again.',
    ]);
    expect(said('tachometer', { reading_2: '11100 rpm' })).toEqual([
      'The two readings, 11\u202f000\u00a0rpm and 11\u202f100\u00a0rpm, lie so near that they tell no slope. Read a propeller of clearly other size, or take the second reading out.',
    ]);
  });
  it('when only half of a measurement is typed', () => {
    const fuel =
      'A measured draw of fuel needs three numbers: the fuel drawn, the laps flown on it and the lap time of that flight. Type all three, or none.';
    for (const kind of ['thrust_law', 'measured_lap', 'tachometer', 'two_stroke'])
      expect(said(kind, { fuel_laps: '60' })).toEqual([fuel]);
    expect(said('electric', { charge_put_back: '1500 mAh' })).toEqual([
      'Charge that was put back needs the running time of that flight beside it. Type both, or none.',
    ]);
  });
  it('when the blades would blow forward', () => {
    const reversed = block('propeller', 'propeller', { pitch: '10 mm', angle_shift: '-8°' });
    expect(said('two_stroke', {}, reversed)).toEqual([
      'No flow was found that fits this propeller (229\u00a0mm × 10\u00a0mm). Look at chords and blade angles: one of them may be mistyped.',
    ]);
  });
  it('when the table of a propeller has holes', () => {
    const table = (fields: Fields) => block('propeller', 'measured_propeller', fields);
    const row = (k: number, J: string): Fields => ({
      [`advance_${k}`]: J,
      [`thrust_${k}`]: '0.1',
      [`power_${k}`]: '0.05',
    });
    expect(said('two_stroke', {}, table(row(1, '0')))).toEqual([
      'A measured table needs three rows or more, each with its advance ratio, thrust and power coefficient. Type the missing numbers.',
    ]);
    expect(said('two_stroke', {}, table({ ...row(1, '0'), advance_2: '0.3' }))).toEqual([
      'A row of the table is not complete: it needs advance ratio, thrust and power coefficient. Type what is missing, or clear the row.',
    ]);
    expect(said('two_stroke', {}, table({ ...row(1, '0'), ...row(2, '0.4'), ...row(3, '0.3') }))).toEqual([
      'The advance ratios must rise from row to row. Put the rows in order.',
    ]);
    expect(said('two_stroke', {}, table({ ...row(1, '0.1'), ...row(2, '0.4'), ...row(3, '0.6') }))).toEqual([
      'The first row must be at rest, with an advance ratio of 0: it is 0.1.',
    ]);
  });
  it('when there is no propeller', () => {
    const document = withEngine('two_stroke');
    const live = openLive(
      { ...document, sheets: onOneSheet(cellsOf(document).filter((cell) => cell.name !== 'propeller')) },
      library,
    );
    expect(faults(live)).toContain('Engine and propeller needs a propeller, and the design has none. Add a propeller.');
  });
});
