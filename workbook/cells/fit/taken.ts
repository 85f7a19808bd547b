import { type Change, type FitAnswer, type LogCell, type LogTaken, textAt } from '../../../engine/index';
import type { Sheet } from '../../store/sheet';
import { today } from '../../store/today';
import { foundWords, statusWords, takenText } from './words';

const NO_INFO = { unit: '', suffix: '' };

/** Puts what a fit has found into the design, and a line for each value into its log. */
export function takenChanges(answer: FitAnswer, log: LogCell | undefined, sheet: Sheet): readonly Change[] {
  const document = sheet.document.value;
  const texts = answer.factors.map((factor) => {
    const info = sheet.name(factor.path) ?? NO_INFO;
    const before = textAt(document, factor.path) ?? '';
    return { path: factor.path, before, after: takenText(factor, info), found: foundWords(factor, info) };
  });
  const taken = texts.map(
    ({ path, before, after, found }): LogTaken => ({
      ...{ date: today(), of: path, before: before === '' ? sheet.shown(path) : before, after },
      note: `${found}. ${statusWords(answer)}`,
    }),
  );
  return [
    ...texts.map(({ path, after }): Change => ({ change: 'text', path, text: after })),
    ...(log ? [{ change: 'cell', cell: { ...log, taken: [...log.taken, ...taken] } } as const] : []),
  ];
}
