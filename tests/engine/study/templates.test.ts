import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { blocks } from '../../../engine/blocks/registry';
import { openText } from '../../../engine/sheet/file';
import { openLive } from '../../../engine/sheet/live';
import { cellsOf } from '../../../engine/sheet/sheets';
import { templatesOf } from '../../../engine/study/design/templates';
import { library } from '../../../engine/study/index';
import { onOneSheet } from '../sheet/one-sheet';

const file = new URL('../../designs/quern.tetherwright.json', import.meta.url);
const opened = openText(readFileSync(file, 'utf8'));
if (!opened.ok) throw new Error(opened.message);
const { document } = opened;
const byKind = new Map(blocks.map((block) => [block.kind, block]));
const withPieces = (fields: Readonly<Record<string, Readonly<Record<string, string>>>>) =>
  templatesOf(
    openLive(
      {
        ...document,
        sheets: onOneSheet([
          ...cellsOf(document),
          ...Object.entries(fields).map(([of, typed], k) => ({
            ...{ kind: 'model' as const, id: `c${90 + k}`, name: of, title: of, of, fields: typed },
          })),
        ]),
      },
      library,
    ),
    byKind,
  ).map(({ cell, title }) => `${cell}: ${title}`);

test('every piece of a design that has a template gives it, as soon as the piece is there', () => {
  const plain = withPieces({});
  expect(plain).toContain('wing: Ribs');
  expect(plain).toContain('engine: Bearers');
  expect(plain).toContain('leadouts: Leadout guide');
  const more = withPieces({ gear: {}, tank: {}, control: {}, room: {} });
  expect(more.filter((each) => !plain.includes(each))).toEqual([
    'gear: Gear wire',
    'tank: Tank',
    'control: Bellcrank and horn',
    'room: Engine travel',
  ]);
});

test('a wire whose runs are too short for its bends has none, and the others stay', () => {
  const short = withPieces({ gear: { bend_radius: '40 mm' } });
  expect(short).toContain('wing: Ribs');
  expect(short).not.toContain('gear: Gear wire');
});
