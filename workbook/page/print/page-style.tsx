import { paperDenominator } from '../../drawing/index';
import { useSheet } from '../../store/context';
import { PAPER_WIDTH, printed } from '../../store/printing';
import { titleRule } from './title-lines';

/** The title block of each sheet, which the browser sets at the foot of its pages. */
export function PageStyle() {
  const sheet = useSheet();
  const head = sheet.document.value;
  const { sheets } = head;
  const denominator = paperDenominator(sheet.snapshot.value?.drawing ?? [], PAPER_WIDTH);
  const rules = sheets.map(({ id, title, pieces }, k) => {
    const first = printed.value === 'set' ? k === 0 : id === sheet.shownSheet.value.id;
    const drawn = first || pieces.some((piece) => piece.kind === 'drawing');
    return titleRule(k + 1, {
      head,
      sheet: `${k + 1} of ${sheets.length}, ${title}`,
      denominator: drawn && sheet.drawingTitle.value !== undefined ? denominator : undefined,
    });
  });
  return <style>{rules.join('\n')}</style>;
}
