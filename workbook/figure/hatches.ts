import { BLACK } from '../theme/tokens';

const SVG = 'http://www.w3.org/2000/svg';

/** Lines of the hatches by which areas are told apart in black: rising, dots, crossed, level, upright. */
const LINES = ['M-1,5L5,-1M-1,1L1,-1M3,5L5,3', 'M2,2h0.01', 'M0,0L4,4M0,4L4,0', 'M0,2H4', 'M2,0V4'] as const;

/** The hatch of the n-th line of a chart as a pattern with this id. */
export function hatchOf(n: number, id: string, document: Document): Element {
  const pattern = document.createElementNS(SVG, 'pattern');
  const set = (of: Element, attributes: Readonly<Record<string, string>>): void => {
    for (const [name, value] of Object.entries(attributes)) of.setAttribute(name, value);
  };
  set(pattern, { id, width: '4', height: '4', patternUnits: 'userSpaceOnUse' });
  const line = document.createElementNS(SVG, 'path');
  const d = LINES[n % LINES.length]!;
  const wide = d === LINES[1] ? '1.6' : '0.6';
  set(line, { d, stroke: BLACK, 'stroke-width': wide, 'stroke-linecap': 'round', fill: 'none' });
  pattern.append(line);
  return pattern;
}
