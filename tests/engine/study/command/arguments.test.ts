import { describe, expect, it } from 'vitest';
import { readArguments } from '../../../../engine/study/command/arguments';

const read = (...words: string[]) => readArguments(words);
const request = (...words: string[]) => {
  const result = read(...words);
  if (result.ask !== 'run') throw new Error(`asked for ${result.ask}`);
  return result.request;
};
const message = (...words: string[]) => {
  const result = read(...words);
  return result.ask === 'nothing' ? result.message : result.ask;
};

describe('words of the command line', () => {
  it('reads the file and every option, in any order', () => {
    expect(
      request(
        '--json',
        '--set',
        'lines.length=60 ft',
        'q.json',
        '--set=tip_weight=25 g',
        '--series',
        'pulls',
        '--names',
      ),
    ).toEqual({
      file: 'q.json',
      set: [
        ['lines.length', '60 ft'],
        ['tip_weight', '25 g'],
      ],
      get: [],
      names: true,
      sweep: 'pulls',
      spread: [],
      spreadCell: '',
      levers: '',
      mends: '',
      best: '',
      weighing: '',
      reconcile: '',
      variants: '',
      variant: '',
      json: true,
    });
  });

  it('takes several names and settings behind one option, up to the next option or the file', () => {
    expect(request('q.json', '--get', 'flight.pull', 'flight.speed', '--json').get).toEqual([
      'flight.pull',
      'flight.speed',
    ]);
    expect(request('--get', 'flight.pull', 'data/q.json')).toMatchObject({ file: 'data/q.json', get: ['flight.pull'] });
    expect(request('q.json', '--set', 'a=1', 'b=2 mm').set).toEqual([
      ['a', '1'],
      ['b', '2 mm'],
    ]);
  });

  it('keeps comparisons and minus signs in a text that is set', () => {
    expect(request('q.json', '--set', 'x=a = b ? 1 : 2', '--set', 'y=-150 mm').set).toEqual([
      ['x', 'a = b ? 1 : 2'],
      ['y', '-150 mm'],
    ]);
  });

  it('lets a blank be set, so that a block estimates again', () => {
    expect(request('q.json', '--set', 'wing.lift_slope=').set).toEqual([['wing.lift_slope', '']]);
  });

  it('says what is missing and how to write it', () => {
    expect(message()).toBe(
      'No file is named. Name one, such as data/designs/quern-25.tetherwright.json; --help says more.',
    );
    expect(message('q.json', '--set', 'tip_weight')).toBe(
      '--set needs NAME=TEXT and found “tip_weight”. Write it like --set "lines.length=60 ft".',
    );
    expect(message('q.json', '--set')).toBe(
      '--set needs NAME=TEXT and found nothing. Write it like --set "lines.length=60 ft".',
    );
    expect(message('q.json', '--get')).toBe(
      '--get needs a name and found none. Write it like --get flight.pull; --names lists them all.',
    );
    expect(message('q.json', '--series', '--json')).toBe(
      '--series needs the name of a trial series and found none. Write it like --series balance_series.',
    );
    expect(message('q.json', '--mends')).toBe(
      '--mends needs the name of a list of what mends and found none. Write it like --mends cg_mends.',
    );
    expect(message('q.json', '--best')).toBe(
      '--best needs the name of best compromises and found none. Write it like --best weight_or_pull.',
    );
    expect(message('q.json', '--variants')).toBe(
      '--variants needs the name of a table of variants and found none. Write it like --variants side_by_side.',
    );
    expect(message('q.json', '--variant')).toBe(
      '--variant needs the name of a variant and found none. Write it like --variant "Ply tail".',
    );
    expect(message('q.json', '--fast')).toBe(
      '--fast is no option here. The options are --set, --get, --names, --series, --helps, --mends, --best, --weighing, --reconcile, --variants, --variant, --tolerances, --samples, --seed, --json and --help.',
    );
    expect(message('q.json', 'ft')).toBe(
      'Two files are named, “q.json” and “ft”. Name one; texts with spaces need quotes.',
    );
    expect(message('q.json', '--help')).toBe('help');
  });
});
