import { BLACK, series, tokens, WHITE } from '../theme/tokens';

/** In the colours of light paper on white; or in black alone, which a photocopier keeps. */
export type Look = 'colour' | 'black';

/** Names of the theme → their colours on white paper. */
const colours = new Map<string, string>([
  ...Object.entries(tokens),
  ...series.flatMap(({ name, line, text }) => [
    [`series-${name}`, line] as const,
    [`series-${name}-text`, text] as const,
  ]),
  ['paper', WHITE],
  ['desk', WHITE],
]);

/** What is white on any paper: it covers what lies below. */
const COVERS: ReadonlySet<string> = new Set(['paper', 'desk']);

const NAMED = /^var\(--([a-z-]+)/;

/** "var(--ink, …)" → "ink"; undefined for what is no colour of the theme. */
export const colourName = (value: string): string | undefined => NAMED.exec(value.trim())?.[1];

/** A colour that holds without the sheet around it. */
export function standing(value: string, look: Look): string {
  const name = value === 'currentColor' ? 'ink' : colourName(value);
  if (name === undefined) return value;
  if (look === 'black') return COVERS.has(name) ? WHITE : BLACK;
  return colours.get(name) ?? BLACK;
}

/** Place of a colour among the lines of a chart; undefined where it is none of them. */
export function seriesOf(value: string): number | undefined {
  const name = colourName(value);
  const at = series.findIndex((each) => name === `series-${each.name}`);
  return at < 0 ? undefined : at;
}
