import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import type { Document } from '../../../engine/sheet/document';
import { openText, serialise } from '../../../engine/sheet/file';
import { faultsOfLive, openLive } from '../../../engine/sheet/live';
import { cellsOf } from '../../../engine/sheet/sheets';
import { answer } from '../../../engine/study/command/answer';
import { readArguments } from '../../../engine/study/command/arguments';
import { library } from '../../../engine/study/index';
import { onOneSheet } from '../sheet/one-sheet';

const demo = fileURLToPath(new URL('../../designs/quern.tetherwright.json', import.meta.url));
const opened = openText(readFileSync(demo, 'utf8'));
if (!opened.ok) throw new Error(opened.message);
const document: Document = {
  ...opened.document,
  sheets: onOneSheet([
    ...cellsOf(opened.document),
    { kind: 'model', id: 'planted-lap', name: 'lap', title: 'Lap', of: 'lap', fields: {} },
    {
      ...{ kind: 'formula', id: 'planted-sums', name: 'sums', title: 'Sums' },
      lines: [
        { name: 'worst', text: 'max(flight.residual, 1e-3)', unit: '' },
        { name: 'solved', text: 'flight.status = 0 and lap.floor_status = 0 ? 1 : 0', unit: '' },
      ],
    },
    {
      ...{ kind: 'trial_series', id: 'planted-sweep', name: 'solver_sweep', title: 'Solver' },
      axes: [{ of: 'line_length', low: '', high: '', count: 3 }],
      wanted: ['flight.iterations', 'lap.residual', 'lap.floor_iterations'],
    },
  ]),
};

test('what solvers did is reached by formulas and sweeps of a sheet and on the command line', () => {
  expect(faultsOfLive(openLive(document, library))).toEqual([]);
  const read = readArguments([
    'quern.json',
    '--get',
    'flight.status',
    'flight.iterations',
    'lap.floor_status',
    'worst',
  ]);
  if (read.ask !== 'run') throw new Error(read.ask);
  const { out, code } = answer(read.request, serialise(document), library);
  expect(out).toMatch(
    /^flight\.status = settled\nflight\.iterations = [1-9]\d*\nlap\.floor_status = settled\nworst = 0\.001\n$/,
  );
  expect(code).toBe(0);
});
