import type { Field, FieldSpecs, Link, OptionalLink } from '../../blocks/block';
import { isLink, isOptional } from '../../blocks/block';
import { roleWithArticle } from '../../blocks/role-words';
import type { BlockCell } from '../document';
import { allNamed, named, quoted } from '../named';
import type { BlockPlace, Builder } from '../specs';

/** The block that a link means, or the sentence that says why there is none. */
export function follow(cell: BlockCell, name: string, { link }: Link, builder: Builder): BlockPlace | string {
  const places = builder.placesOf(link);
  const picked = cell.fields[name];
  const found = places.find((place) => place.name === picked);
  if (found) return found;
  if (picked !== undefined && places.length > 0) return strange(cell, picked, link, places);
  if (places.length === 1) return places[0]!;
  const needs = `${named(cell.name)} needs ${roleWithArticle(link)}`;
  if (places.length === 0) return `${needs}, and the design has none. Add ${roleWithArticle(link)}.`;
  return `${needs}, and the design has ${places.length}: ${listOf(places)}. Remove all but one, or pick the one that is meant.`;
}

/** The block that an optional link means, undefined where there is none, or the sentence that says why that can't be said. */
export function followOptional(
  cell: BlockCell,
  name: string,
  { link }: OptionalLink,
  builder: Builder,
): BlockPlace | string | undefined {
  const places = builder.placesOf(link);
  const picked = cell.fields[name];
  const role = roleWithArticle(link);
  if (picked === undefined) {
    if (places.length < 2) return places[0];
    return `${named(cell.name)} uses ${role} where there is one, and the design has ${places.length}: ${listOf(places)}. Pick the one that is meant.`;
  }
  const found = places.find((place) => place.name === picked);
  if (found) return found;
  if (places.length === 0) return `${named(cell.name)} takes ${quoted(picked)}, which is not ${role}. Pick none.`;
  return strange(cell, picked, link, places);
}

const listOf = (places: readonly BlockPlace[]): string => allNamed(places.map((place) => place.name));

const strange = (cell: BlockCell, picked: string, link: string, places: readonly BlockPlace[]): string =>
  `${named(cell.name)} takes ${quoted(picked)}, which is not ${roleWithArticle(link)}. Pick one of these: ${listOf(places)}.`;

/** What a blank field stands for while the piece is there that it takes from: "lap.least_pull". */
export function takenFrom(cell: BlockCell, field: Field, fields: FieldSpecs, builder: Builder): string | undefined {
  const [link, result] = (field.taken ?? '').split('.') as [string, string | undefined];
  const spec = fields[link];
  if (!spec || !isLink(spec) || !isOptional(spec)) return undefined;
  const place = followOptional(cell, link, spec, builder);
  return typeof place === 'object' ? `${place.name}.${result}` : undefined;
}
