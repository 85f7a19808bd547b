import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { blocks } from '../../../../engine/blocks/registry';
import type { Document, SweepCell } from '../../../../engine/sheet/document';
import { openText } from '../../../../engine/sheet/file';
import { openLive, setLive } from '../../../../engine/sheet/live';
import { cellsOf } from '../../../../engine/sheet/sheets';
import type { Library } from '../../../../engine/sheet/specs';
import { library } from '../../../../engine/study/index';
import { startEngine } from '../../../../engine/study/session';
import { positions } from '../../../../engine/study/sweep/lattice';
import type { SweepProgress } from '../../../../engine/terms/index';
import { onOneSheet } from '../../sheet/one-sheet';
import { crew } from './crew';

const file = new URL('../../../designs/quern.tetherwright.json', import.meta.url);

function quern(sweep: Pick<SweepCell, 'axes' | 'wanted'>): Document {
  const opened = openText(readFileSync(file, 'utf8'));
  if (!opened.ok) throw new Error(opened.message);
  const cell: SweepCell = { kind: 'trial_series', id: 'planted', name: 'planted', title: '', ...sweep };
  return { ...opened.document, sheets: onOneSheet([...cellsOf(opened.document), cell]) };
}

async function swept(document: Document, from: Library = library): Promise<SweepProgress> {
  const engine = startEngine(from, crew(2, from).ports);
  await engine.open(document);
  let last: SweepProgress | undefined;
  await engine.sweep({ sweep: 'planted' }, (p) => {
    last = p;
  });
  return last!;
}

const along = (of: string, low: string, high: string, count: number) => ({ of, low, high, count });

describe('sweeps of the Quern 25 in a pool', () => {
  it('give for 50 designs taken at random, bit for bit, what setting each by hand gives', async () => {
    const document = quern({
      axes: [
        along('engine_station', '', '', 13),
        along('line_length', '', '', 11),
        { ...along('stabiliser_stock', '', '', 0) },
      ],
      wanted: ['flight.pull', 'flight.lap_time', 'balance.cg_x', 'flight.outboard_low'],
    });
    const { axes, columns, wanted, total } = await swept(document);
    const options = ['stabiliser_stock'].map(
      (name) => cellsOf(document).find((cell) => cell.kind === 'choice' && cell.name === name)!,
    );
    const stocks = options[0]!.kind === 'choice' ? options[0]!.options.map((option) => option.name) : [];
    expect(total).toBe(13 * 11 * stocks.length);
    const at = new Uint32Array(3);
    let seed = 20;
    let byHand = openLive(document, library);
    for (let k = 0; k < 50; k++) {
      seed = (seed * 16807) % 2147483647;
      const sample = seed % total;
      positions(
        sample,
        axes.map((axis) => axis.values.length),
        at,
      );
      byHand = setLive(
        byHand,
        [
          ['engine_station', `${axes[0]!.values[at[0]!]!} m`],
          ['line_length', `${axes[1]!.values[at[1]!]!} m`],
          ['stabiliser_stock', stocks[at[2]!]!],
        ],
        library,
      ).live;
      const set = wanted.map((path) => byHand.state.m[byHand.compiled.program.slotOf.get(path)!]);
      expect([sample, ...columns.map((column) => column[sample])]).toEqual([sample, ...set]);
    }
  });

  it('run the flight once a sample where it is asked for, and never where only the balance is', async () => {
    let flights = 0;
    const counted = blocks.map((block) =>
      block.kind !== 'flight'
        ? block
        : {
            ...block,
            run: ((...given) => {
              flights++;
              return block.run(...given);
            }) as typeof block.run,
          },
    );
    const counting: Library = { ...library, blocks: counted };
    const axes = [along('engine_station', '', '', 21), along('tip_weight', '', '', 21)];
    const opening = async (wanted: string[]): Promise<number> => {
      flights = 0;
      const engine = startEngine(counting, crew(2, counting).ports);
      await engine.open(quern({ axes, wanted }));
      const before = flights;
      await engine.sweep({ sweep: 'planted' }, () => {});
      return flights - before;
    };
    expect(await opening(['balance.cg_x', 'parts.mass'])).toBe(0);
    expect(await opening(['balance.cg_x', 'flight.pull'])).toBe(21 * 21);
  });
});
