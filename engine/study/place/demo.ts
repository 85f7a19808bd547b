import type { Cell, Document } from '../../sheet/document';
import { openText, serialise } from '../../sheet/file';
import { openLive } from '../../sheet/live';
import { sheetRemoval } from '../../sheet/remove-sheet';
import { cellsOf } from '../../sheet/sheets';
import { applyChanges } from '../../sheet/transaction';
import { library } from '../library';
import { askedOf, placeStudy, studies } from './index';

/** Pick of a study → the choice of the demo that is meant. */
const ANSWERS: Readonly<Record<string, string>> = { stock: 'stabiliser_stock' };

/** The file of the demo with every study put on it anew. */
export function demoText(file: string): string {
  const opened = openText(file);
  if (!opened.ok) throw new Error(opened.message);
  return serialise(demoAnew(opened.document));
}

/**
 * The demo with every study put on it anew: its study sheets are taken off and placed again as a builder would, in order. What was
 * flown and typed into a log stays.
 */
function demoAnew(demo: Document): Document {
  const questions = new Set(studies().map((study) => askedOf(study, demo, library.blocks).question));
  const typed = cellsOf(demo).filter((cell) => cell.kind === 'log');
  const bare = demo.sheets
    .filter((sheet) => questions.has(sheet.title))
    .toReversed()
    .reduce((now, { id }) => applyChanges(now, sheetRemoval(now, id)).document, demo);
  return studies().reduce((now, study) => {
    const answer = placeStudy(study, openLive(now, library), library, ANSWERS);
    if (!answer.ok) throw new Error(`${study.question} ${answer.message}`);
    return withRows(answer.document, typed);
  }, bare);
}

function withRows(document: Document, typed: readonly Cell[]): Document {
  const filled = (cell: Cell): Cell => {
    const kept = typed.find((each) => each.kind === 'log' && each.name === cell.name);
    if (cell.kind !== 'log' || kept?.kind !== 'log') return cell;
    const { rows, line_sets, taken } = kept;
    return { ...cell, rows, line_sets, taken };
  };
  return { ...document, sheets: document.sheets.map((sheet) => ({ ...sheet, pieces: sheet.pieces.map(filled) })) };
}
