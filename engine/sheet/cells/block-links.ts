import type { Field, FieldSpecs, Link, OptionalLink } from '../../blocks/block';
import { isLink, isOptional } from '../../blocks/block';
import type { BlockCell } from '../document';
import type { BlockPlace, Builder } from '../specs';

const withArticle = (word: string): string => `${/^[aeiou]/.test(word) ? 'an' : 'a'} ${word}`;

/** The block that a link means, or the sentence that says why there is none. */
export function follow(cell: BlockCell, name: string, spec: Link, builder: Builder): BlockPlace | string {
  const places = builder.placesOf(spec.link);
  const named = cell.fields[name];
  const list = places.map((place) => place.name).join(', ');
  if (named !== undefined) {
    const place = places.find((candidate) => candidate.name === named);
    if (place) return place;
    if (places.length > 0) {
      return `${cell.name}.${name} names "${named}", which is no ${spec.link}. Name one of these: ${list}.`;
    }
  }
  if (places.length === 1) return places[0]!;
  const needs = `${cell.name} needs ${spec.link.endsWith('s') ? 'one block for' : 'one'} ${spec.link}`;
  if (places.length === 0) {
    const mend = spec.link === builder.trade.partsRole ? 'a table of parts' : `${withArticle(spec.link)} block`;
    return `${needs}; there is none. Add ${mend}.`;
  }
  return `${needs}; there are ${places.length}: ${list}. Remove all but one, or write the name of the one that is meant in ${cell.name}.${name}.`;
}

/** The block that an optional link means, undefined where there is none, or the sentence that says why that can't be said. */
export function followOptional(
  cell: BlockCell,
  name: string,
  { link }: OptionalLink,
  builder: Builder,
): BlockPlace | string | undefined {
  const places = builder.placesOf(link);
  const named = cell.fields[name];
  const list = places.map((place) => place.name).join(', ');
  const path = `${cell.name}.${name}`;
  if (named === undefined) {
    if (places.length < 2) return places[0];
    return `${cell.name} takes from one ${link} where there is one; there are ${places.length}: ${list}. Write the name of the one that is meant in ${path}.`;
  }
  const place = places.find((candidate) => candidate.name === named);
  if (place) return place;
  if (places.length === 0) return `${path} names "${named}", and the design has no ${link}. Blank it.`;
  return `${path} names "${named}", which is no ${link}. Name one of these: ${list}.`;
}

/** What a blank field stands for while the piece is there that it takes from: "lap.least_pull". */
export function takenFrom(cell: BlockCell, field: Field, fields: FieldSpecs, builder: Builder): string | undefined {
  const [link, result] = (field.taken ?? '').split('.') as [string, string | undefined];
  const spec = fields[link];
  if (!spec || !isLink(spec) || !isOptional(spec)) return undefined;
  const place = followOptional(cell, link, spec, builder);
  return typeof place === 'object' ? `${place.name}.${result}` : undefined;
}
