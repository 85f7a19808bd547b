import { type Document, fromSI, type Template } from '../../engine/index';

export type UnitSet = Document['units'];
type Words = Template['notes'][number];

/** Words with their figures: lengths to a tenth of a millimetre or a thousandth of an inch, angles to half a degree. */
export function toldOnPaper({ words, figures = [] }: Words, units: UnitSet): string {
  let next = 0;
  return words.replaceAll('{}', () => {
    const figure = figures[next++];
    if (!figure) return '–';
    if (figure.as === 'angle') return `${signed(fromSI(figure.value, '°'), 1)}°`;
    return units === 'metric'
      ? `${signed(fromSI(figure.value, 'mm'), 1)}\u00a0mm`
      : `${signed(fromSI(figure.value, 'in'), 3)}\u00a0in`;
  });
}

/** A number of so many places, without a sign where that leaves nothing. */
function signed(value: number, places: number): string {
  const text = Math.abs(value).toFixed(places);
  return value < 0 && Number(text) !== 0 ? `−${text}` : text;
}
