import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { main } from '../../engine/compute';

const DEMO = fileURLToPath(new URL('../designs/quern.tetherwright.json', import.meta.url));

let out = '';
let err = '';
let folder: string;
beforeEach(() => {
  out = err = '';
  folder = mkdtempSync(join(tmpdir(), 'compute-'));
  vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    out += text;
    return true;
  });
  vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    err += text;
    return true;
  });
});
afterEach(() => {
  vi.restoreAllMocks();
  rmSync(folder, { recursive: true });
});

describe('the command line', () => {
  it('ends with 0 and the value', () => {
    expect(main([DEMO, '--set', 'line_length=60 ft', '--get', 'lines.length'])).toBe(0);
    expect(out).toMatch(/^lines\.length = \d/);
    expect(err).toBe('');
  });

  it('says when a formula gives way', () => {
    expect(main([DEMO, '--set', 'lines.length=60 ft', '--get', 'lines.length', 'flight.pull'])).toBe(0);
    expect(out).toMatch(/^lines\.length = 18\.3\u00a0m\nflight\.pull = 2\d\.\d\u00a0N\n$/);
    expect(err).toBe('lines.length held the formula “line_length”; now it holds “60 ft”.\n');
  });

  it('ends with 1 and the reason why a model does not fly', () => {
    expect(main([DEMO, '--set', 'engine.static_thrust=0.5 N', '--get', 'flight.pull'])).toBe(1);
    expect(out).toBe('');
    expect(err).toMatch(
      /^flight\.pull has no answer\. Too little thrust to fly level: at [\d.]+\u00a0m\/s, the best speed, [\d.]+\u00a0N are missing\./,
    );
  });

  it('ends with 1 and the sentence of a fault', () => {
    expect(main([DEMO, '--set', 'tip_weight=3 mm', '--get', 'parts.mass'])).toBe(1);
    expect(out).toBe('');
    expect(err).toMatch(/^tip_weight: 3\u00a0mm is a length; here a mass/);
  });

  it('ends with 1 where the file cannot be read or is none', () => {
    expect(main([join(folder, 'nowhere.json')])).toBe(1);
    expect(err).toMatch(/nowhere\.json cannot be read: .*\. Name a file that is there\.\n$/);
    err = '';
    const broken = join(folder, 'broken.json');
    writeFileSync(broken, '{ "format": ');
    expect(main([broken])).toBe(1);
    expect(err).toMatch(/^This file is broken at line 1, column \d+: .* Nothing was opened\.\n$/);
  });

  it('ends with 2 where the words are not understood, and helps when asked', () => {
    expect(main(['--fast'])).toBe(2);
    expect(err).toMatch(/^--fast is no option here\./);
    expect(main(['--help'])).toBe(0);
    expect(out).toContain('npm run compute -- FILE');
  });
});
