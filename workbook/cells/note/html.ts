import { micromark } from 'micromark';
import { type NoteCell, notePieces, saidPath, unparted } from '../../../engine/index';
import type { Reader } from '../../store/reader';

type Said = Pick<Reader, 'shown' | 'faultAt' | 'name'>;

/**
 * A note as HTML: CommonMark, with the values of its formulas in their places. A formula at fault stands there as it was
 * typed. micromark escapes raw HTML and refuses addresses that could run code; values are put in afterwards, so that no sign
 * of theirs is taken for markup.
 */
export function noteHtml({ name, text }: Pick<NoteCell, 'name' | 'text'>, sheet: Said): string {
  const said: { readonly value: string; readonly state: string }[] = [];
  const markdown = notePieces(text).map((piece) => {
    if ('words' in piece) return unparted(piece.words.replace(MARKS, ''));
    const path = saidPath(name, said.length);
    const atFault = sheet.faultAt(path)?.state === 'fault';
    // What consists of one name is shown as that name is everywhere: with its unit, or the title of what is picked.
    const own = piece.formula.trim();
    const value = atFault ? `{${piece.formula}}` : sheet.shown(sheet.name(own) ? own : path);
    said.push({ value, state: atFault ? 'said at-fault' : 'said' });
    return `${BEGIN}${said.length - 1}${END}`;
  });
  return withSafeLinks(micromark(markdown.join(''), { extensions: [NO_PICTURES] })).replace(PIECE, (piece) => {
    const isTag = piece.startsWith('<');
    return piece.replace(PLACE, (_, k: string) => {
      const { value, state } = said[Number(k)]!;
      return isTag ? escaped(value) : `<span class="${state}">${escaped(value)}</span>`;
    });
  });
}

/** A picture would be fetched from elsewhere as soon as a note is seen: what was to be one is a link. */
const NO_PICTURES = { disable: { null: ['labelStartImage'] } };

/** A link leads within the page or to the web, there in a tab that knows nothing of this one; any other address is left out. */
const withSafeLinks = (html: string): string =>
  html.replace(/<a href="([^"]*)"/g, (link, address: string) => {
    if (address.startsWith('#')) return link;
    return /^https?:\/\//i.test(address) ? `${link} target="_blank" rel="noopener noreferrer"` : '<a';
  });

/** Signs of no script, which hold the place of a value while the words are laid out. */
const BEGIN = '\uE000';
const END = '\uE001';
const MARKS = /[\uE000\uE001]/g;
const PLACE = /\uE000(\d+)\uE001/g;
const PIECE = /<[^>]*>|[^<]+/g;

/** Spaces within a value don't break: a number keeps its unit. */
const escaped = (value: string): string =>
  value
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll(' ', '\u00a0');
