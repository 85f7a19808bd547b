import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { control } from '../../../engine/blocks/control/index';
import { blocks } from '../../../engine/blocks/registry';
import type { ChartCell, Document } from '../../../engine/sheet/document';
import { openText } from '../../../engine/sheet/file';
import { faultsOfLive, openLive } from '../../../engine/sheet/live';
import { cellsOf } from '../../../engine/sheet/sheets';
import { describeBlock } from '../../../engine/study/describe/blocks';
import { traceOf } from '../../../engine/study/design/trace';
import { library } from '../../../engine/study/index';
import { onOneSheet } from '../sheet/one-sheet';

const file = new URL('../../designs/quern.tetherwright.json', import.meta.url);
const opened = openText(readFileSync(file, 'utf8'));
if (!opened.ok) throw new Error(opened.message);
const chart: ChartCell = {
  ...{
    kind: 'chart',
    id: 'c91',
    name: 'travel_chart',
    title: 'Travel',
    chart: 'along',
    series: '',
    of: 'control.travel',
  },
  ...{ across: 'handle', up: ['elevator', 'line_difference'], lines: '' },
};
const withControl = (fields: Readonly<Record<string, string>> = {}): Document => ({
  ...opened.document,
  sheets: onOneSheet([
    ...cellsOf(opened.document),
    { kind: 'model', id: 'c90', name: 'control', title: 'Control', of: 'control', fields },
    chart,
  ]),
});
const byKind = new Map(blocks.map((block) => [block.kind, block]));
function open(fields: Readonly<Record<string, string>> = {}) {
  const live = openLive(withControl(fields), library);
  return {
    live,
    read: (path: string): number => live.state.m[live.compiled.program.slotOf.get(path)!]!,
    trace: (name: string) => traceOf(live, undefined, byKind, `control.${name}`),
  };
}

describe('the traces of the control linkage', () => {
  it('run from full down to full up as the results say, at rising elevator', () => {
    const { live, read, trace } = open({ up_line_longer: '2 mm' });
    expect(faultsOfLive(live)).toEqual([]);
    const travel = trace('travel');
    const at = (name: string) => travel.present[travel.columns.findIndex((each) => each.name === name)]!;
    const [handle, elevator, ratio] = [at('handle'), at('elevator'), at('ratio')];
    expect(elevator[0]).toBeCloseTo(-read('control.down_travel'), 9);
    expect(elevator.at(-1)).toBeCloseTo(read('control.up_travel'), 9);
    expect(handle.at(-1)).toBeCloseTo(read('control.handle_at_up'), 12);
    for (let k = 1; k < elevator.length - 1; k++) {
      expect(elevator[k + 1]).toBeGreaterThan(elevator[k]!);
      const slope = (elevator[k + 1]! - elevator[k - 1]!) / (handle[k + 1]! - handle[k - 1]!);
      expect(ratio[k]! / slope).toBeCloseTo(1, 2);
    }
    // Elevator up is pressed down by the air, and held by the up line.
    expect(at('hinge_moment').at(-1)).toBeGreaterThan(0);
    expect(at('hinge_moment')[0]).toBeLessThan(0);
  });
  it('tell the joints of three positions to the picture, and that to no chart', () => {
    const { trace, live } = open();
    const joints = trace('linkage');
    expect([...joints.present[0]!]).toEqual([-1, 0, 1]);
    expect(describeBlock(control).traces.map(({ name, outlines }) => [name, outlines])).toEqual([
      ['travel', undefined],
      ['linkage', true],
    ]);
    const wrong = openLive(
      {
        ...live.compiled.document,
        sheets: onOneSheet(
          cellsOf(live.compiled.document).map((cell) =>
            cell.name === 'travel_chart' ? { ...chart, of: 'control.linkage' } : cell,
          ),
        ),
      },
      library,
    );
    expect(faultsOfLive(wrong).map(({ message }) => message)).toEqual([
      'Travel shows “control.linkage”, which is nothing that runs along a line. There is “Along the travel of the handle” of Control.',
    ]);
  });
  it('say the reason of the block where it has no answer', () => {
    expect(open({ horn_height: '12 mm' }).trace('travel').message).toMatch(
      /^The pushrod comes in line with the horn when the bellcrank has turned by \d+(\.\d+)?° (up|down), before its travel ends: /,
    );
  });
});
