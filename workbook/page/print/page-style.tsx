import { placedParts, standingDrawing } from '../../cells/index';
import { paperDenominator, roomOf } from '../../drawing/index';
import { useSheet } from '../../store/context';
import { PAPER_WIDTH, sheetsOnPaper } from '../../store/printing';
import { titleRule, WEIGHTS_PAGE } from './title-lines';

/** The title block of each sheet, which the browser sets at the foot of its pages. */
export function PageStyle() {
  const sheet = useSheet();
  const head = sheet.document.value;
  const { sheets } = head;
  const parts = standingDrawing(sheet.cells.value)?.parts ? roomOf(placedParts(sheet)) : [];
  const denominator = paperDenominator([...(sheet.snapshot.value?.drawing ?? []), ...parts], PAPER_WIDTH);
  const [begins] = sheetsOnPaper(sheets, sheet.shownSheet.value);
  const rules = sheets.map(({ id, title, pieces }, k) => {
    const first = id === begins?.id;
    const drawn = first || pieces.some((piece) => piece.kind === 'drawing');
    return titleRule(k + 1, {
      head,
      sheet: `${k + 1} of ${sheets.length}, ${title}`,
      denominator: drawn && sheet.drawingTitle.value !== undefined ? denominator : undefined,
    });
  });
  const weights = titleRule(WEIGHTS_PAGE, { head, sheet: 'weight statement', denominator: undefined });
  return <style>{[...rules, weights].join('\n')}</style>;
}
