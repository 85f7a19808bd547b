import { describe, expect, it } from 'vitest';
import { GUESS_WORDS, guessWordsName, noteFormulas, saidPath } from '../../../../engine/sheet/cells/index';
import type { Cell, Document } from '../../../../engine/sheet/document';
import { openText, serialise } from '../../../../engine/sheet/file';
import { faultsOfLive, type Live, openLive } from '../../../../engine/sheet/live';
import { sheetRemoval } from '../../../../engine/sheet/remove-sheet';
import { cellsOf } from '../../../../engine/sheet/sheets';
import { applyChanges } from '../../../../engine/sheet/transaction';
import { library } from '../../../../engine/study/index';
import { askedOf, placeStudy } from '../../../../engine/study/place/index';
import type { Study } from '../../../../engine/study/place/study';
import type { StudyAnswer } from '../../../../engine/study/place/told';

export type Placed = StudyAnswer & { readonly ok: true };

/** One study on a design; throws where it can't be put there. */
export function placedOn(
  live: Live,
  name: string,
  of: readonly Study[],
  answers: Readonly<Record<string, string>> = {},
): Placed {
  const answer = placeStudy(of.find((study) => study.name === name)!, live, library, answers);
  if (!answer.ok) throw new Error(answer.message);
  return answer;
}

/** All of some studies on a design, one after the other: what each step put on, and the design with all of them. */
export function allOn(design: Document, of: readonly Study[]) {
  const steps: { readonly before: Document; readonly answer: Placed }[] = [];
  let live = openLive(design, library);
  for (const study of of) {
    const before = live.compiled.document;
    if (askedOf(study, before, library.blocks).unfit !== '') continue;
    const answer = placedOn(live, study.name, of);
    steps.push({ before, answer });
    live = openLive(answer.document, library);
  }
  return { steps, live };
}

/** Sentences of a piece with the names under which their numbers are read. */
function sentencesOf(cell: Cell): readonly (readonly [name: string, text: string])[] {
  if (cell.kind === 'note') return [[cell.name, cell.text]];
  return cell.kind === 'guess' ? GUESS_WORDS.map((words) => [guessWordsName(cell, words), cell[words]] as const) : [];
}

/** What holds for whatever is put on a design. */
export function holdTheLaws(name: string, { steps, live }: ReturnType<typeof allOn>): void {
  describe(`on ${name}`, () => {
    it('every one settles with no fault', () => {
      expect(faultsOfLive(live).map(({ path, message }) => `${path}: ${message}`)).toEqual([]);
    });
    it('every sentence has its numbers', () => {
      for (const [cell, text] of cellsOf(live.compiled.document).flatMap(sentencesOf)) {
        expect(text, cell).not.toContain('@');
        for (const [k, formula] of noteFormulas(text).entries()) {
          const slot = live.compiled.program.slotOf.get(saidPath(cell, k))!;
          expect(live.state.m[slot], `{${formula}} of ${cell}`).not.toBeNaN();
        }
      }
    });
    it('the file with all of them opens again', () => {
      const text = serialise(live.compiled.document);
      const opened = openText(text);
      expect(opened.ok && serialise(opened.document)).toBe(text);
    });
    it('taking one off leaves the design as it was, to the byte', () => {
      for (const { before, answer } of steps.toReversed()) {
        const back = applyChanges(answer.document, sheetRemoval(answer.document, answer.sheet)).document;
        expect(serialise(back)).toBe(serialise(before));
      }
    });
  });
}
