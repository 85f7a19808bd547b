import { type AnyBlock, type AnySpecs, isLink, isNeeded, isOptional, type Theory } from '../blocks/block';
import { MOST_CORNERS } from '../blocks/outline';
import { roleWords } from '../blocks/role-words';
import { type Chapter, type EntryPiece, fieldAnchor, type Piece, resultAnchor } from './chapter';
import { quantityEntry } from './quantities';

/** The chapter of one block, made from what it declares. */
export function blockChapter(block: AnyBlock): Chapter {
  const role = block.role ?? block.kind;
  const own = Object.entries<AnySpecs[string]>(block.fields);
  const links = own.filter(([, spec]) => isLink(spec));
  const fields = own.filter(([, spec]) => !isLink(spec));
  const results = Object.entries<AnySpecs[string]>(block.results);
  return {
    id: `block.${block.kind}`,
    group: 'Pieces of the model',
    title: block.title,
    pieces: [
      { kind: 'text', text: block.doc },
      ...takes(links),
      ...under(
        `fields.${block.kind}`,
        'Fields',
        fields.map(([name, spec]) => quantityEntry(fieldAnchor(block.kind, name), `${role}.${name}`, spec)),
      ),
      ...under(`outlines.${block.kind}`, 'Outlines by corners', outlineEntries(block)),
      ...under(
        `results.${block.kind}`,
        'Results',
        results.map(([name, spec]) => quantityEntry(resultAnchor(block.kind, name), `${role}.${name}`, spec)),
      ),
      ...theoryPieces(block.kind, block.theory),
      ...reasonPieces(block),
    ],
  };
}

const outlineEntries = (block: AnyBlock): EntryPiece[] =>
  Object.entries(block.outlines ?? {}).map(([name, { title, doc, corner, least, replaces }]) => ({
    kind: 'entry',
    id: fieldAnchor(block.kind, name),
    name: `${block.role ?? block.kind}.${name}`,
    symbol: '',
    title,
    doc,
    facts: [
      `one corner a line: ${corner.map((axis) => axis.title).join(', then ')}, with a semicolon between them`,
      `mm or in, ${least} to ${MOST_CORNERS} corners`,
      `in the place of ${replaces.map((each) => titleOf(block, each)).join(', ')}`,
    ],
    notes: [],
  }));

function takes(links: readonly (readonly [string, AnySpecs[string]])[]): Piece[] {
  if (links.length === 0) return [];
  const items = links.flatMap(([, spec]) =>
    isLink(spec) ? [`${roleWords(spec.link)}${isOptional(spec) ? ', where it is there' : ''}: ${spec.doc}`] : [],
  );
  return [
    { kind: 'text', text: 'Uses, by itself where there is one of each:' },
    { kind: 'list', items },
  ];
}

/** A heading over pieces; nothing where there are none. */
export const under = (id: string, text: string, pieces: readonly (Piece | EntryPiece)[]): Piece[] =>
  pieces.length === 0 ? [] : [{ kind: 'heading', id, text }, ...pieces];

/** Equations, and what is left out. */
export function theoryPieces(kind: string, theory: Theory | undefined): Piece[] {
  if (!theory) return [];
  const { equations, notModelled } = theory;
  return [
    ...under(
      `equations.${kind}`,
      'Equations',
      equations.map(({ title, text, doc = '', source }) => ({
        kind: 'equation',
        title,
        lines: text.split('\n'),
        doc,
        source: told(source),
      })),
    ),
    ...under(
      `left-out.${kind}`,
      'Not modelled',
      notModelled.length === 0 ? [] : [{ kind: 'list', items: notModelled }],
    ),
  ];
}

/** "Source: …", but for what needs no publication. */
const told = (source: string): string => (/^(Deriv|Defin|Geom)/.test(source) ? source : `Source: ${source}`);

/** Why a design may have no answer here, in the words that the sheet uses. */
function reasonPieces(block: AnyBlock): Piece[] {
  const sentences = Object.values(block.reasons);
  if (sentences.length === 0) return [];
  const items = sentences.map((sentence) =>
    sentence.replace(/\{([\w.]+)\}/g, (_, name: string) => `⟨${titleOf(block, name)}⟩`),
  );
  return under(`reasons.${block.kind}`, 'Why there may be no answer', [
    { kind: 'text', text: 'What stands in ⟨ ⟩ is filled in with its value.' },
    { kind: 'list', items },
  ]);
}

function titleOf(block: AnyBlock, name: string): string {
  const [first = '', second] = name.split('.');
  const spec = block.fields[first] ?? block.results[first];
  if (second !== undefined && spec && isNeeded(spec)) return inWords(spec.results[second], second);
  return inWords(spec, first);
}

const inWords = (spec: AnySpecs[string] | undefined, name: string): string =>
  spec && 'title' in spec ? spec.title.toLowerCase() : name.replaceAll('_', ' ');
