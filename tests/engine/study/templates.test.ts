import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { blocks } from '../../../engine/blocks/registry';
import { openText } from '../../../engine/sheet/file';
import { openLive, setLive } from '../../../engine/sheet/live';
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
  );
const titlesWith = (fields: Parameters<typeof withPieces>[0]) =>
  templatesOf(withPieces(fields), byKind).map(({ cell, title }) => `${cell}: ${title}`);

test('every piece of a design that has a template gives it, as soon as the piece is there', () => {
  const plain = titlesWith({});
  expect(plain).toContain('wing: Ribs');
  expect(plain).toContain('engine: Bearers with engine travel');
  expect(plain).toContain('leadouts: Leadout guide');
  const more = titlesWith({ gear: {}, tank: {}, control: {}, room: {} });
  expect(more.filter((each) => !plain.includes(each))).toEqual([
    'gear: Gear wire',
    'tank: Tank',
    'control: Bellcrank and horn',
  ]);
});

test('a wire whose runs are too short for its bends has none, and the others stay', () => {
  const short = titlesWith({ gear: { bend_radius: '40 mm' } });
  expect(short).toContain('wing: Ribs');
  expect(short).not.toContain('gear: Gear wire');
});

test('the engine goes as far aft as the room piece that takes from it tells, and to the rear of its bearers without one', () => {
  const aft = (fields: Parameters<typeof withPieces>[0]) => {
    const live = withPieces(fields);
    const bearers = templatesOf(live, byKind).find(({ title }) => title === 'Bearers with engine travel')!;
    const row = bearers.views[0]!.marks.find((mark) => mark.is === 'words' && mark.words.startsWith('Engine at'));
    const at = (path: string) => live.state.m[live.compiled.program.slotOf.get(path)!]!;
    return { told: row?.is === 'words' ? row.figures![1]!.value : Number.NaN, at };
  };
  const roomless = aft({});
  const { at } = roomless;
  expect(roomless.told).toBeCloseTo(at('engine.bearer_rear') - at('engine.engine_length') / 2, 12);
  // A tank close behind the engine, at its height.
  const close = aft({ room: { tank_x: '-60 mm', tank_z: '5 mm', tank_length: '40 mm', tank_height: '40 mm' } });
  expect(close.told).toBe(close.at('room.rearmost'));
  expect(close.told).toBeLessThan(roomless.told - 0.01);
});

test('ribs and lug holes are those that are typed in the pieces', () => {
  const { live, unknown } = setLive(
    withPieces({}),
    [
      ...[['wing.rib_count', '5'] as const, ['wing.rib_station', '-100 mm'] as const],
      ...[['engine.bearer_gap', '24 mm'] as const, ['engine.lug_along', '16 mm'] as const],
      ...[['engine.lug_across', '29 mm'] as const, ['engine.lug_diameter', '3 mm'] as const],
    ],
    library,
  );
  expect(unknown).toEqual([]);
  const of = (title: string) => templatesOf(live, byKind).find((each) => each.title === title)!;
  const asks = (title: string) => of(title).notes.filter(({ words }) => /\btype\b/i.test(words));
  expect(of('Ribs').views.map(({ title }) => title)).toEqual([
    ...['Rib at the root', 'Rib 2 of 5', 'Rib 3 of 5', 'Rib 4 of 5', 'Rib at the tips'],
    'Rib at the station that is typed',
  ]);
  const holes = of('Bearers with engine travel').views[0]!.marks.filter(
    (mark) => mark.is === 'hole' && mark.diameter === 0.003,
  );
  expect(holes).toHaveLength(4);
  expect([...asks('Ribs'), ...asks('Bearers with engine travel')]).toEqual([]);
});

test('ribs at root and tips alone say where more are asked for', () => {
  const ribs = templatesOf(withPieces({}), byKind).find(({ title }) => title === 'Ribs')!;
  expect(ribs.notes.map(({ words }) => words)).toContain(
    'For more ribs type “Ribs of a panel” or “Station of one more rib” in the wing piece.',
  );
});
