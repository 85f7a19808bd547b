import {
  type Completion,
  type CompletionResult,
  type CompletionSource,
  pickedCompletion,
} from '@codemirror/autocomplete';
import type { EditorView } from '@codemirror/view';
import {
  type Dimension,
  functions,
  type NameInfo,
  sameDimension,
  type Unit,
  unitNamed,
  units,
} from '../../engine/index';
import { type AboutWord, aboutFunction, aboutName, aboutUnit, aboutWord, knownWords } from './about';
import { comparedWith, namePlace, unitPlace } from './place';
import { saidOf } from './said';
import type { Vocabulary } from './vocabulary';

/** Something that could be written, with what is said of it. */
interface Proposal extends Completion {
  readonly about: AboutWord;
  /** Among those that fit equally well the greater comes first; 0 is usual. */
  readonly rank: number;
}

/** Shown beside the list for what is picked in it. */
const info = (option: Completion): Node => saidOf((option as Proposal).about);

/** What could stand at the caret: units behind a number, else names, functions and words. */
export function proposalsFrom(vocabulary: Vocabulary): CompletionSource {
  return ({ state, pos, explicit }): CompletionResult | null => {
    const text = state.doc.toString();
    const behind = unitPlace(text, pos);
    if (behind && (behind.word !== '' || explicit)) {
      const options = unitProposals(behind.word, dimensionWanted(vocabulary), explicit);
      return options.length === 0 ? null : { from: behind.from, to: behind.to, options, filter: false };
    }
    const place = namePlace(text, pos);
    if (!place || (place.word === '' && !explicit)) return null;
    const options = ranked(place.word, [
      ...optionProposals(comparedWith(text, place, vocabulary) ?? vocabulary.name(vocabulary.path)),
      ...nameProposals(vocabulary),
      ...functionProposals(),
      ...wordProposals(),
    ]);
    // Whoever has written a whole name needs no list.
    if (options.length === 0 || (!explicit && options[0]!.label === place.word)) return null;
    return { from: place.from, to: place.to, options, filter: false };
  };
}

const dimensionWanted = (vocabulary: Vocabulary): Dimension | undefined => {
  const own = vocabulary.name(vocabulary.path);
  return own && !own.options ? own.dimension : undefined;
};

/** Nearest first: of the wanted dimension, then in the order of the tables. */
function unitProposals(word: string, wanted: Dimension | undefined, explicit: boolean): Proposal[] {
  const fits = (unit: Unit): boolean => wanted !== undefined && sameDimension(unit.dimension, wanted);
  if (!explicit && unitNamed(word)) return [];
  const spelt = ({ name, aliases }: Unit): boolean => [name, ...aliases].some((each) => each.startsWith(word));
  const called = ({ title }: Unit): boolean => title.startsWith(word.toLowerCase());
  const order = (unit: Unit): number => (fits(unit) ? 0 : 2) + (spelt(unit) ? 0 : 1);
  const begun = units.filter((unit) => unit.name !== '' && (spelt(unit) || called(unit)));
  const proposals = begun
    .toSorted((a, b) => order(a) - order(b))
    .map((unit) => ({ label: unit.name, detail: unit.title, rank: 0, info, about: aboutUnit(unit) }));
  // A condition may go on behind a number.
  const goesOn = wordProposals().filter(({ label }) => JOINING.has(label) && label.startsWith(word));
  return word === '' ? proposals : [...proposals, ...goesOn];
}

const JOINING: ReadonlySet<string> = new Set(['and', 'or', 'then', 'else']);

/** A better fit counts more than any rank but that of what comes last. */
const FIT_WEIGHT = 100;

/** What fits a word, best first: what is called so before what has it in its title. */
function ranked(word: string, proposals: readonly Proposal[]): Proposal[] {
  const wanted = word.toLowerCase();
  return proposals
    .map((proposal) => ({ proposal, fit: fitOf(wanted, proposal) }))
    .filter(({ fit }) => fit >= 0)
    .sort((a, b) => (b.fit - a.fit) * FIT_WEIGHT + b.proposal.rank - a.proposal.rank)
    .map(({ proposal }) => proposal);
}

/** 4: called so, 3: begins so, 2: a piece of it begins so, 1: a word of its title does; −1: no way. */
function fitOf(word: string, { label, detail = '' }: Proposal): number {
  const name = label.toLowerCase();
  if (name === word) return 4;
  if (name.startsWith(word)) return 3;
  if (name.includes(`.${word}`) || name.includes(`_${word}`)) return 2;
  const title = detail.toLowerCase();
  return word.length > 1 && (title.startsWith(word) || title.includes(` ${word}`)) ? 1 : -1;
}

function optionProposals(of: NameInfo | undefined): Proposal[] {
  return (of?.options ?? []).map((option) => ({
    label: option,
    detail: `one of ${of!.title}`,
    rank: 50,
    info,
    about: { word: option, is: `One of what ${of!.title} can be.`, doc: '' },
  }));
}

/** A long list is easier to read when what is seldom named comes last, an end of a slide or of a sweep after everything. */
const SELDOM: Partial<Record<NameInfo['kind'], number>> = { limit: -500, part: -20, library: -20, field: -10 };
const FITTING = 10;

function nameProposals(vocabulary: Vocabulary): Proposal[] {
  const wanted = dimensionWanted(vocabulary);
  const proposals: Proposal[] = [];
  for (const each of vocabulary.names()) {
    // A curve can't be read by a formula, and a text can't need itself.
    if (each.kind === 'curve' || each.path === vocabulary.path) continue;
    const fits = wanted !== undefined && !each.options && sameDimension(each.dimension, wanted);
    proposals.push({
      label: each.path,
      detail: each.title,
      rank: (SELDOM[each.kind] ?? 0) + (fits ? FITTING : 0) - (each.detail ? FITTING : 0),
      info,
      get about() {
        return aboutName(each, vocabulary);
      },
    });
  }
  return proposals;
}

function functionProposals(): Proposal[] {
  return functions.map((each) => ({
    label: each.name,
    displayLabel: `${each.name}( )`,
    detail: each.doc,
    rank: -30,
    info,
    apply: applyFunction,
    about: aboutFunction(each, each.name),
  }));
}

const wordProposals = (): Proposal[] =>
  knownWords.map((word) => ({ label: word, rank: -50, info, about: aboutWord(word)!, detail: aboutWord(word)!.doc }));

/** Writes the parentheses too, and puts the caret between them. */
function applyFunction(view: EditorView, completion: Completion, from: number, to: number): void {
  const insert = `${completion.label}()`;
  view.dispatch({
    changes: { from, to, insert },
    selection: { anchor: from + insert.length - 1 },
    userEvent: 'input.complete',
    annotations: pickedCompletion.of(completion),
  });
}
