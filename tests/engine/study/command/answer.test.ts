import { describe, expect, it } from 'vitest';
import { serialise } from '../../../../engine/sheet/file';
import { cellsOf } from '../../../../engine/sheet/sheets';
import { answer } from '../../../../engine/study/command/answer';
import { readArguments } from '../../../../engine/study/command/arguments';
import { onOneSheet } from '../../sheet/one-sheet';
import { library, slideRule } from '../slide-rule';

const check = {
  kind: 'check',
  id: '8',
  name: 'short',
  title: 'Short enough',
  of: 'sum.total',
  low: '1 mm',
  high: '40 mm',
  below: 'it vanishes',
  above: 'it does not fit the box',
} as const;
const document = { ...slideRule(), sheets: onOneSheet([...cellsOf(slideRule()), check]) };
const file = serialise(document);

function ask(...words: string[]) {
  const read = readArguments(['slide.json', ...words]);
  if (read.ask !== 'run') throw new Error(`asked for ${read.ask}`);
  return answer(read.request, file, library);
}

describe('the answer on the command line', () => {
  it('reads results with their unit, as the page shows them', () => {
    expect(ask('--get', 'root.mean', 'double', 'bolt', 'aside.size')).toEqual({
      out: 'root.mean = 28.3\u00a0mm\ndouble = 70.6\u00a0mm\nbolt = middle\naside.size = 1\n',
      err: '',
      code: 0,
    });
  });

  it('gives key figures and checks when nothing is asked for', () => {
    expect(ask()).toEqual({ out: 'double = 70.6\u00a0mm\n✓ Short enough: 35.3\u00a0mm\n', err: '', code: 0 });
    expect(ask('--set', 'a=30 mm').out).toBe(
      'double = 98.9\u00a0mm\n✕ Short enough: stop, 49.4\u00a0mm is over 40\u00a0mm: it does not fit the box\n',
    );
    expect(ask('--set', 'a=0 mm', 'bolt.middle.length=0 mm').out).toContain(
      '✕ Short enough: stop, 0\u00a0mm is under 1\u00a0mm: it vanishes\n',
    );
  });

  it('says of a check without a limit that it stops nothing, and fills what stands in braces in a reason', () => {
    const said = (changed: object, ...words: string[]) => {
      const pieces = [...cellsOf(slideRule()), { ...check, ...changed }];
      const read = readArguments(['slide.json', ...words]);
      if (read.ask !== 'run') throw new Error(`asked for ${read.ask}`);
      return answer(read.request, serialise({ ...slideRule(), sheets: onOneSheet(pieces) }), library);
    };
    expect(said({ low: '', high: '' }).out).toContain('– Short enough: 35.3\u00a0mm, no limit yet: it stops nothing\n');
    expect(JSON.parse(said({ low: '', high: '' }, '--json').out).checks).toEqual([
      { name: 'short', title: 'Short enough', stop: null },
    ]);
    expect(said({ high: '30 mm', above: 'the {bolt} bolt needs {sum.total - 5 mm}' }).out).toContain(
      '✕ Short enough: stop, 35.3\u00a0mm is over 30\u00a0mm: the middle bolt needs 30.3\u00a0mm\n',
    );
  });

  it('sets variables, choices and fields, and says when a formula gives way', () => {
    expect(ask('--set', 'a=1 in', '--set', 'bolt=short', '--set', 'sum.times=twice', '--get', 'sum.total')).toEqual({
      out: 'sum.total = 81.8\u00a0mm\n',
      err: '',
      code: 0,
    });
    expect(ask('--set', 'b=45 mm', '--get', 'root.mean')).toEqual({
      out: 'root.mean = 30\u00a0mm\n',
      err: 'b held the formula “2 × a”; now it holds “45 mm”.\n',
      code: 0,
    });
  });

  it('takes no text at fault, and ends with the sentence of the fault', () => {
    const { out, err, code } = ask('--set', 'a=3 g', '--get', 'root.mean');
    expect([out, code]).toEqual(['', 1]);
    expect(err).toMatch(/3\u00a0g is a mass; here a length is wanted\. Write a length, such as 10\u00a0mm\./);
    expect(ask('--set', 'root.side=11 m')).toMatchObject({ out: '', code: 1 });
    expect(ask('--set', 'root.side=11 m').err).toMatch(
      /^root held|^root\.side held the formula “a”; now it holds “11 m”\.\nThe side of Root is 11\u202f000\u00a0mm/,
    );
    expect(ask('--set', 'doubel=3')).toEqual({
      out: '',
      err: 'Nothing is called doubel that a text can be typed into. Did you mean double?\n',
      code: 1,
    });
  });

  it('says why something asked for has no answer, and still gives the rest', () => {
    expect(ask('--set', 'b=-1 mm', '--get', 'double', 'aside.size')).toEqual({
      out: 'aside.size = 1\n',
      err: 'b held the formula “2 × a”; now it holds “-1 mm”.\ndouble has no answer. Side 20\u00a0mm and height −1\u00a0mm point opposite ways.\n',
      code: 1,
    });
    expect(ask('--get', 'rot.mean')).toEqual({
      out: '',
      err: 'Nothing is called rot.mean. Did you mean root.mean? --names lists all names.\n',
      code: 1,
    });
  });

  it('lists every name with unit, kind and what it is', () => {
    const lines = ask('--names').out.trimEnd().split('\n');
    expect(lines).toContain('root.mean\tmm\tresult\tGeometric mean');
    expect(lines).toContain('bolt\tone of short, middle, long\tchoice\tBolt');
    expect(lines).toContain('aside.by\tplain number\tfield\tBy');
    expect(new Set(lines.map((line) => line.split('\t')[0])).size).toBe(lines.length);
  });

  it('prints a sweep as a table, axes first, with the reason of every gap', () => {
    const axes = [
      { of: 'b', low: '-10\u00a0mm', high: '20\u00a0mm', count: 2 },
      { of: 'bolt', low: '', high: '', count: 0, options: ['short', 'long'] },
    ];
    const swept = serialise(slideRule({ sweep: { axes, wanted: ['root.mean'] } }));
    const read = readArguments(['f', '--series', 'grid']);
    if (read.ask !== 'run') throw new Error();
    expect(answer(read.request, swept, library).out).toBe(
      [
        'b (mm),bolt,root.mean (mm),no answer because',
        '-10,short,,Side 20\u00a0mm and height −10\u00a0mm point opposite ways.',
        '-10,long,,Side 20\u00a0mm and height −10\u00a0mm point opposite ways.',
        '20,short,20,',
        '20,long,20,',
        '',
      ].join('\r\n'),
    );
    expect(JSON.parse(answer({ ...read.request, json: true }, swept, library).out).sweep).toEqual({
      axes: [
        { name: 'b', values: [-0.01, 0.02] },
        { name: 'bolt', values: ['short', 'long'] },
      ],
      columns: { 'root.mean': [null, null, 0.02, 0.02] },
      reasons: [...Array(2).fill('Side 20\u00a0mm and height −10\u00a0mm point opposite ways.'), '', ''],
    });
    expect(ask('--series', 'gird')).toEqual({
      out: '',
      err: 'There is no trial series called “gird”. The trial series are grid.\n',
      code: 1,
    });
  });

  it('prints JSON with SI values beside the text of the page', () => {
    const told = JSON.parse(ask('--get', 'double', 'bolt', '--json').out);
    expect(told).toEqual({
      values: {
        double: { si: 2 * (Math.sqrt(0.02 * 0.04) + 0.007), text: '70.6\u00a0mm' },
        bolt: { si: 1, text: 'middle' },
      },
      notes: [],
      faults: [],
    });
    const all = JSON.parse(ask('--json').out);
    expect(all.checks).toEqual([{ name: 'short', title: 'Short enough', stop: false }]);
  });

  it('refuses a file that is none, with the reason', () => {
    const read = readArguments(['f']);
    if (read.ask !== 'run') throw new Error();
    const { out, err, code } = answer(read.request, '{ "format": "tetherwright", "version": 99 }', library);
    expect([out, code]).toEqual(['', 1]);
    expect(err).toMatch(/newer Tetherwright/);
  });
});
