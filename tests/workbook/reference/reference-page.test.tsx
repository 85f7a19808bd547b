import { type Signal, signal } from '@preact/signals';
import { parseHTML } from 'linkedom';
import { h, render } from 'preact';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { makeReference } from '../../../engine/reference/index';
import type { Paper } from '../../../workbook/page/paper';
import type { Room } from '../../../workbook/page/room';
import type { Going } from '../../../workbook/reference/address';
import { placesOf } from '../../../workbook/reference/places';

const { document, window } = parseHTML('<!doctype html><html><body><div id="app"></div></body></html>');

class Observer {
  observe(): void {}
  disconnect(): void {}
}

const chapters = makeReference();
const find = placesOf(chapters);
let going: Signal<Going>;
const go = async (hash: string): Promise<void> => {
  going.value = { place: find(hash), first: true };
  await vi.waitFor(() => expect(document.querySelector('.chapter')?.id).toBe(find(hash).chapter.id));
};

beforeAll(async () => {
  window.scrollTo = () => {};
  window.Element.prototype.scrollIntoView = () => {};
  Object.assign(window, { devicePixelRatio: 2 });
  Object.assign(globalThis, { document, window, ResizeObserver: Observer });
  const { ReferencePage } = await import('../../../workbook/reference/reference-page');
  going = signal<Going>({ place: find(''), first: true });
  const props = { chapters, going, paper: signal<Paper>('device'), room: signal<Room>('column') };
  render(h(ReferencePage, props), document.getElementById('app')!);
});

// Files of a worker share what is global, and those after this one have no browser.
afterAll(() => {
  Reflect.deleteProperty(globalThis, 'ResizeObserver');
});

test('the cautions come first, one chapter at a time, without holes for numbers', () => {
  const shown = [...document.querySelectorAll('.chapter')];
  expect(shown.map(({ id }) => id)).toEqual(['cautions']);
  expect(shown[0]!.textContent).toContain('Pull-test handle, lines, connectors, leadouts and bellcrank together');
  expect(shown[0]!.textContent).not.toMatch(/[[\]{}|]/);
});

test('the contents lead to every chapter', () => {
  const links = [...document.querySelectorAll('.contents nav a')].map((link) => link.getAttribute('href')?.slice(1));
  expect([...links].sort()).toEqual(chapters.map(({ id }) => id).sort());
});

test('a field is shown in its chapter, marked as the place gone to, with the ways on', async () => {
  await go('#field.wing.root_chord');
  const field = document.getElementById('field.wing.root_chord')!;
  expect(field.textContent).toContain('Root chord');
  expect(field.textContent).toContain('mm or in · default 230\u00a0mm · 20 to 1000\u00a0mm');
  expect([...document.querySelectorAll('.entry.here')]).toEqual([field]);
  expect(document.querySelector('.contents [aria-current="page"]')?.getAttribute('href')).toBe('#block.wing');
  const parts = [...document.querySelectorAll('.chapter-parts a')].map((link) => link.textContent);
  expect(parts).toEqual(['Fields', 'Outlines by corners', 'Results', 'Equations', 'Not modelled']);
  expect([...document.querySelectorAll('.chapter-foot a')].map((link) => link.textContent)).toEqual([
    'Before: Air',
    'Next: Tail',
  ]);
  expect(document.querySelector('.title-block')?.textContent).toContain('Reference: Wing');
  expect(document.querySelector('.frame > style')?.textContent).toContain('"Tetherwright, reference: Wing"');
});

test('a place that is not there is said, and the first chapter shown', async () => {
  await go('#field.wing.nothing');
  expect(document.querySelector('[role="alert"]')?.textContent).toBe(
    'The reference has no place called field.wing.nothing. Search for a word of it.',
  );
});
