import { describe, expect, it } from 'vitest';
import { block } from '../../../engine/blocks/block';
import { describeBlock } from '../../../engine/study/describe/blocks';
import { FORCE, LENGTH, ONE } from '../../../engine/units/index';

const gauge = block({
  kind: 'gauge',
  title: 'Spring gauge',
  doc: 'Reads a pull.',
  fields: {
    reach: {
      dimension: LENGTH,
      unit: 'mm',
      tradeUnit: 'in',
      symbol: 'r',
      title: 'Reach',
      doc: 'Along the hook.',
      default: 0.0381,
      range: [0, 1],
    },
    slope: {
      dimension: ONE,
      unit: '',
      symbol: 'a',
      title: 'Slope',
      doc: 'Of the spring.',
      default: Number.NaN,
      range: [0, 9],
      basis: 'From the wire.',
      advanced: true,
      source: 'A book',
    },
    side: { option: ['left', 'right'], default: 'right', symbol: '', title: 'Side', doc: 'Which hand.' },
    wing: { link: 'wing', results: {}, doc: 'The wing it hangs from.' },
  },
  results: {
    pull: {
      dimension: FORCE,
      unit: 'N',
      tradeUnit: 'lbf',
      symbol: 'T',
      title: 'Pull',
      doc: 'At the hook.',
      usual: [10, 40],
    },
    thrust: { curve: 'airspeed', dimension: FORCE, unit: 'N', symbol: 'P', title: 'Thrust', doc: 'Against airspeed.' },
  },
  reasons: { slack: 'The hook hangs loose.' },
  run: () => 'slack',
  traces: {
    swing: {
      title: 'Swing',
      doc: 'Of the hook.',
      columns: {
        reach: { dimension: LENGTH, unit: 'mm', tradeUnit: 'in', symbol: 'r', title: 'Reach', doc: 'Along the hook.' },
      },
      run: () => undefined,
    },
  },
});

describe('a block as plain data', () => {
  const told = describeBlock(gauge);

  it('survives being sent as JSON', () => {
    expect(JSON.parse(JSON.stringify(told))).toEqual(told);
  });

  it('writes defaults as text with their unit and leaves estimates blank', () => {
    expect(told.fields.map((field) => [field.name, field.kind, field.default])).toEqual([
      ['reach', 'quantity', '38.1 mm'],
      ['slope', 'quantity', ''],
      ['side', 'option', 'right'],
      ['wing', 'link', ''],
    ]);
    expect(told.fields[1]).toMatchObject({ basis: 'From the wire.', source: 'A book', advanced: true, tradeUnit: '' });
    expect(told.fields[3]).toMatchObject({ role: 'wing', title: 'wing' });
  });

  it('keeps bands, curves and reasons, and takes the kind for a missing role', () => {
    expect(told.role).toBe('gauge');
    expect(told.results[0]).toMatchObject({ name: 'pull', tradeUnit: 'lbf', usual: [10, 40], curve: false });
    expect(told.results[1]).toMatchObject({ name: 'thrust', curve: true, tradeUnit: 'lbf', detail: true });
    expect(told.reasons).toEqual([{ name: 'slack', text: 'The hook hangs loose.' }]);
    expect(describeBlock({ ...gauge, role: 'scale' }).role).toBe('scale');
  });

  it('tells what its traces hold', () => {
    expect(told.traces).toEqual([
      {
        name: 'swing',
        title: 'Swing',
        doc: 'Of the hook.',
        columns: [
          {
            name: 'reach',
            title: 'Reach',
            symbol: 'r',
            doc: 'Along the hook.',
            dimension: LENGTH,
            unit: 'mm',
            suffix: '',
          },
        ],
      },
    ]);
    expect(describeBlock({ ...gauge, traces: undefined }).traces).toEqual([]);
  });
});
