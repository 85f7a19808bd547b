import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { DEEPEST, layerRules } from '../../.ci/layer-rules.mjs';
import { type Layer, layers, placeOf, ruled, sentenceOf } from '../../.ci/layers.mjs';

const root = fileURLToPath(new URL('../../', import.meta.url));
const names = layers.map(({ name }) => name);

/** Sources of a layer, from its own folder on. */
const filesOf = ({ kind, room, name }: Layer): readonly string[] =>
  kind === 'file'
    ? [`${name}.ts`]
    : readdirSync(`${root}${room}/${name}`, { recursive: true, encoding: 'utf8' })
        .filter((file) => /\.tsx?$/.test(file))
        .map((file) => file.replaceAll('\\', '/'));

test('the rules of lint are those of the list', () => {
  expect(JSON.parse(readFileSync(`${root}.ci/layers.json`, 'utf8')), 'npm run layers writes them anew').toEqual(
    layerRules(),
  );
});

test('a layer may import what stands below it alone', () => {
  const above = layers.flatMap(({ name, may }, k) =>
    may.filter((other) => !names.slice(0, k).includes(other)).map((other) => `${name} → ${other}`),
  );
  expect(above).toEqual([]);
});

test('every folder and file of the engine is a layer, and every layer is there', () => {
  const there = readdirSync(`${root}engine`).filter((entry) => !/^tsconfig\..*json$|\.d\.ts$/.test(entry));
  const listed = layers
    .filter(({ room }) => room === 'engine')
    .map(({ name, kind }) => name + (kind === 'file' ? '.ts' : ''));
  expect(there.sort()).toEqual(listed.sort());
  expect(layers.map(placeOf).filter((place) => !existsSync(root + place) && !existsSync(`${root}${place}.ts`))).toEqual(
    [],
  );
});

test('no file stands deeper than the rules reach', () => {
  const all = ruled.flatMap((layer) => filesOf(layer).map((file) => `${layer.name}/${file}`));
  expect(all.length).toBeGreaterThan(500);
  expect(all.filter((file) => file.split('/').length - 2 > DEEPEST)).toEqual([]);
});

test('what takes types alone takes nothing else', () => {
  for (const layer of layers.filter(({ types }) => types)) {
    for (const file of filesOf(layer)) {
      const text = readFileSync(
        `${root}${layer.room}/${layer.kind === 'folder' ? `${layer.name}/` : ''}${file}`,
        'utf8',
      );
      const outside = layer.kind === 'folder' ? '../' : './';
      const taken = [...text.matchAll(/^(?:import|export) ([^;]*?)from '(\.[^']*)'/gm)];
      const values = taken.filter(([, what = '', from = '']) => from.startsWith(outside) && !what.startsWith('type '));
      expect(
        values.map(([line]) => line),
        `${layer.name}: ${file}`,
      ).toEqual([]);
    }
  }
});

test('a refusal says what the layer is for and what it may import', () => {
  const said = (name: string) => sentenceOf(layers.find((layer) => layer.name === name)!);
  expect(said('units')).toBe(
    'engine/units/ knows quantities and nothing else: of the project it may import engine/exact only.',
  );
  expect(said('physics')).toBe(
    'engine/physics/ computes with plain SI numbers: of the project it may import engine/exact and engine/numerics/ only.',
  );
  expect(said('workbook')).toBe('workbook/ shows and edits: of the project it may import data/ and engine/index only.');
});
