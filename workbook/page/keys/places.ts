import { cellsOf } from '../../../engine/index';
import { goTo } from '../../controls/go-to';
import type { PickOption } from '../../controls/pick/index';
import type { Designs } from '../../store/designs';
import { openField } from '../../store/field-open';
import { askingNewsletter } from '../../store/figures';
import { askingToListen } from '../../store/listening';
import { askingFullSize, askingToPrint } from '../../store/printing';
import { askingToShare } from '../../store/sharing';
import type { Sheet } from '../../store/sheet';
import { goToPieceOf, showSheet } from './moves';

/** Somewhere to go to, or something to do, that is found by its words. */
export interface Goal extends PickOption {
  run(): void;
}

/** Every sheet, every piece by its number, every variable, and what the words at the top do. */
export function goalsOf(sheet: Sheet, designs: Designs | undefined): readonly Goal[] {
  return [...sheets(sheet), ...commands(sheet, designs), ...variables(sheet), ...pieces(sheet)];
}

const sheets = (sheet: Sheet): Goal[] =>
  sheet.sheetList.peek().map(({ id, number, title }) => ({
    value: `sheet ${id}`,
    title: `Sheet ${number}, ${title}`,
    group: 'Sheets',
    run: () => showSheet(sheet, id),
  }));

function commands(sheet: Sheet, designs: Designs | undefined): Goal[] {
  const group = 'Commands';
  const command = (title: string, run: () => void): Goal => ({ value: `do ${title}`, title, group, run });
  const [figure] = sheet.part('figures');
  return [
    command('Save', sheet.save),
    command('Add a piece', () => {
      sheet.adding.value = sheet.shownSheet.peek().pieces.length;
    }),
    command('Add a study', () => {
      sheet.choosingStudy.value = 'studies';
    }),
    command('Lessons', () => {
      sheet.choosingStudy.value = 'lessons';
    }),
    command('Add a sheet', () => {
      const id = sheet.addSheet(`Sheet ${sheet.sheetList.peek().length + 1}`);
      if (id !== undefined) showSheet(sheet, id);
    }),
    ...(figure === undefined
      ? []
      : [
          command(`Make a chart of ${sheet.name(figure)?.title ?? figure}`, () => {
            sheet.charting.value = figure;
          }),
        ]),
    command('Open', () => {
      sheet.choosing.value = true;
    }),
    ...(designs
      ? [
          command('Begin with my model', () => {
            designs.beginning.value = true;
          }),
        ]
      : []),
    command('Undo', sheet.undo),
    command('Redo', sheet.redo),
    command('Day card', openField),
    command('Print', () => {
      askingToPrint.value = true;
    }),
    command('Templates at full size', () => {
      askingFullSize.value = true;
    }),
    command('Listen to a flight', () => {
      askingToListen.value = {};
    }),
    command('Share this design', () => {
      askingToShare.value = 'to';
    }),
    command('Newsletter page', () => {
      askingNewsletter.value = true;
    }),
    command('Keys', () => {
      sheet.asking.value = 'keys';
    }),
  ];
}

const variables = (sheet: Sheet): Goal[] =>
  cellsOf(sheet.document.peek()).flatMap((cell) =>
    cell.kind === 'variables'
      ? cell.rows.map(({ name, title }) => ({
          value: `variable ${name}`,
          title,
          group: `Variables: ${cell.title}`,
          run: () => goTo(sheet, { cell: cell.id, path: name }),
        }))
      : [],
  );

const pieces = (sheet: Sheet): Goal[] =>
  sheet.part('sheets').flatMap(({ title: on, pieces }) =>
    pieces.map((cell, k) => ({
      value: `piece ${cell.id}`,
      title: cell.kind === 'drawing' ? cell.title : `${numberOf(pieces, k)}, ${cell.title}`,
      group: `On the sheet ${on}`,
      run: () => goToPieceOf(sheet, cell),
    })),
  );

/** A drawing has no number. */
const numberOf = (pieces: readonly { readonly kind: string }[], at: number): number =>
  pieces.slice(0, at + 1).filter(({ kind }) => kind !== 'drawing').length;
