import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { CheckCell, Document } from '../../../engine/sheet/document';
import { openText, serialise } from '../../../engine/sheet/file';
import { type Live, openLive } from '../../../engine/sheet/live';
import { cellsOf } from '../../../engine/sheet/sheets';
import { answer } from '../../../engine/study/command/answer';
import { readArguments } from '../../../engine/study/command/arguments';
import { library } from '../../../engine/study/index';
import { placeStudy, studies } from '../../../engine/study/place/index';
import { begun, forms } from './place/begun';

const demo = new URL('../../../data/designs/quern-25.tetherwright.json', import.meta.url);

function opened(text: string): Document {
  const file = openText(text);
  if (!file.ok) throw new Error(file.message);
  return file.document;
}

/** A begun design with the study of the pull test. */
function studied(): Document {
  const study = studies().find(({ name }) => name === 'pull_test_study')!;
  const placed = placeStudy(study, openLive(begun(forms[0]!), library), library);
  if (!placed.ok) throw new Error(placed.message);
  return placed.document;
}

const valueIn = ({ compiled, state }: Live, path: string): number => state.m[compiled.program.slotOf.get(path)!]!;

const HOLDS = ['handle', 'cable', 'lines', 'leadouts', 'bellcrank', 'pivot', 'bearing', 'glue'].map(
  (part) => `strength.${part}_hold${part.endsWith('s') ? '' : 's'}`,
);

describe.each([['the demo', opened(readFileSync(demo, 'utf8'))] as const, ['a begun design', studied()] as const])(
  'the check of all parts in %s',
  (_, design) => {
    const check = cellsOf(design).find(
      (cell): cell is CheckCell => cell.kind === 'check' && cell.title.startsWith('Every part'),
    )!;

    it('watches the least of all that hold, and not one of them', () => {
      const live = openLive(design, library);
      const counted = [...HOLDS, 'strength.connectors_hold'].map((path) => valueIn(live, path)).filter(Number.isFinite);
      expect(counted.length).toBeGreaterThanOrEqual(7);
      expect(valueIn(live, check.name)).toBe(Math.min(...counted) / valueIn(live, 'strength.test_load'));
      expect(check.low).toBe('1');
    });

    it('stops, and names the part, when the pivot bolt alone is too thin', () => {
      const read = readArguments(['a.json', '--set', 'strength.pivot_diameter=1 mm']);
      if (read.ask !== 'run') throw new Error(`asked for ${read.ask}`);
      const said = answer(read.request, serialise(design), library).out;
      const line = said.split('\n').find((each) => each.includes(check.title));
      expect(line).toMatch(/^✕ Every part.*: stop, 0\.\d+ is under 1: the pivot bolt breaks in the test: /);
      expect(said).not.toContain('weakest part over pull test');
    });

    it('is not needed to stop: the ratio itself may not come under 1', () => {
      const sheets = design.sheets.map((sheet) => ({
        ...sheet,
        pieces: sheet.pieces.filter((piece) => piece.id !== check.id),
      }));
      const read = readArguments(['a.json', '--set', 'strength.pivot_diameter=1 mm']);
      if (read.ask !== 'run') throw new Error(`asked for ${read.ask}`);
      expect(answer(read.request, serialise({ ...design, sheets }), library).out).toMatch(
        /✕ The weakest part over pull test of .*: stop, 0\.\d+ is under 1: the weakest part breaks in the pull test\n/,
      );
    });
  },
);
