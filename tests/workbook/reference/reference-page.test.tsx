import { signal } from '@preact/signals';
import { parseHTML } from 'linkedom';
import { h, render } from 'preact';
import { beforeAll, expect, test } from 'vitest';
import { makeReference } from '../../../engine/reference/index';
import type { Paper } from '../../../workbook/page/paper';

const { document, window } = parseHTML('<!doctype html><html><body><div id="app"></div></body></html>');

class Observer {
  observe(): void {}
  disconnect(): void {}
}

beforeAll(async () => {
  Object.assign(globalThis, { document, window, ResizeObserver: Observer });
  const { ReferencePage } = await import('../../../workbook/reference/reference-page');
  const paper = signal<Paper>('device');
  render(h(ReferencePage, { chapters: makeReference(), paper }), document.getElementById('app')!);
});

test('the contents lead to every chapter, and every chapter is there', () => {
  const links = [...document.querySelectorAll('.contents a')].map((link) => link.getAttribute('href')?.slice(1));
  const chapters = [...document.querySelectorAll('.chapter')].map((chapter) => chapter.id);
  expect([...links].sort()).toEqual([...chapters].sort());
  expect(chapters.length).toBeGreaterThan(15);
});

test('every field of a block stands under a place of its own', () => {
  const field = document.getElementById('field.wing.root_chord')!;
  expect(field.textContent).toContain('Root chord');
  expect(field.textContent).toContain('mm or in · default 230 mm · 20 to 1000 mm');
});

test('the cautions come first, without holes for numbers', () => {
  const first = document.querySelector('.chapter')!;
  expect(first.textContent).toContain('Pull-test handle, lines, connectors, leadouts and bellcrank together');
  expect(first.textContent).not.toMatch(/[[\]{}|]/);
});
