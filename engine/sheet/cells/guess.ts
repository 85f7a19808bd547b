import * as v from 'valibot';
import { GUESS_PLACES, GUESS_WAYS, type GuessCell, type GuessOption, type SweepCell } from '../document';
import { allNamed, named } from '../named';
import { cellsOf } from '../sheets';
import type { Builder, TextSpec } from '../specs';
import { baseEntries, unitEntry } from './entries';
import type { CellKindOf, Text } from './kind';
import { noteFormulas, saidPath, standsInBraces, withFormulas } from './note-pieces';
import { mapFields, mapRows, withRow } from './rows';
import type { Say } from './wanted';

/** What of a guess is words with formulas in braces. */
export const GUESS_WORDS = ['question', 'why', 'try_this', 'instructor'] as const;
type Words = (typeof GUESS_WORDS)[number];
const ENDS = ['low', 'high'] as const;
/** More than a class. */
export const MOST_GUESSES = 60;

type Named = Pick<GuessCell, 'name'>;
/** What words of a guess are called: the first formula of the question is read under `pull_guess.question.said1`. */
export const guessWordsName = ({ name }: Named, words: Words): string => `${name}.${words}`;
/** Path of the ends of an answer to be chosen: `pull_guess.option1.low`. */
export const guessOptionPath = ({ name }: Named, k: number): string => `${name}.option${k + 1}`;

const said = (cell: GuessCell) =>
  GUESS_WORDS.flatMap((words) =>
    noteFormulas(cell[words]).map((text, k) => ({ words, k, text, path: saidPath(guessWordsName(cell, words), k) })),
  );

/** A question with its guesses and the answer of the design, which is read under the name of the piece. */
export const guessCell: CellKindOf<GuessCell> = {
  kind: 'guess',
  schema: v.strictObject({
    ...baseEntries('guess'),
    question: v.string(),
    way: v.picklist(GUESS_WAYS),
    of: v.string(),
    unit: unitEntry,
    options: v.array(v.strictObject({ words: v.string(), low: v.string(), high: v.string() })),
    series: v.string(),
    why: v.string(),
    try_this: v.string(),
    instructor: v.string(),
    guesses: v.array(
      v.strictObject({
        by: v.string(),
        text: v.string(),
        line: v.optional(v.pipe(v.array(v.number()), v.length(GUESS_PLACES))),
      }),
    ),
    shown: v.optional(v.boolean()),
  }),
  owns: (cell) => [cell.name],
  texts: (cell): readonly Text[] => [
    { path: cell.name, text: cell.of },
    ...said(cell).map(({ path, text }) => ({ path, text })),
    ...cell.options.flatMap((option, k) =>
      ENDS.map((end) => ({ path: `${guessOptionPath(cell, k)}.${end}`, text: option[end] })),
    ),
  ],
  put(cell, path, text) {
    if (path === cell.name) return { ...cell, of: text };
    return putSaid(cell, path, text) ?? putEnd(cell, path, text);
  },
  rename: (cell, path, to) => (path === cell.name ? { ...cell, name: to } : undefined),
  rewrite: (cell, { formula, path }) =>
    mapFields(cell, {
      of: formula(cell.of),
      series: cell.series === '' ? '' : path(cell.series),
      options: mapRows(cell.options, (option) =>
        mapFields(option, { low: formula(option.low), high: formula(option.high) }),
      ),
      ...Object.fromEntries(GUESS_WORDS.map((words) => [words, withFormulas(cell[words], formula)])),
    }),
  lay(cell, builder) {
    if (!builder.claim(cell.name, cell.id)) return;
    const say: Say = (message) => builder.fault({ cell: cell.id, path: cell.name, message });
    layAnswer(cell, builder);
    for (const { path, text } of said(cell)) {
      const title = `${cell.title}: {${text}}`;
      builder.text({ cell: cell.id, path, text, kind: 'formula', title, unit: '', wants: 'anything', detail: true });
    }
    if (cell.way === 'choice') layOptions(cell, builder, say);
    if (cell.guesses.length > MOST_GUESSES) {
      say(`${named(cell.name)} has ${cell.guesses.length} guesses. At most ${MOST_GUESSES} are allowed: remove some.`);
    }
    if (cell.way === 'line') builder.later(() => checkLine(cell, builder, say));
  },
};

function putSaid(cell: GuessCell, path: string, text: string): GuessCell | undefined {
  const at = said(cell).find((each) => each.path === path);
  if (!at || !standsInBraces(text)) return undefined;
  return { ...cell, [at.words]: withFormulas(cell[at.words], (formula, k) => (k === at.k ? text : formula)) };
}

function putEnd(cell: GuessCell, path: string, text: string): GuessCell | undefined {
  for (const [k, option] of cell.options.entries()) {
    const end = ENDS.find((each) => path === `${guessOptionPath(cell, k)}.${each}`);
    if (end) return { ...cell, options: withRow<GuessOption>(cell.options, k, { ...option, [end]: text }) };
  }
  return undefined;
}

function layAnswer(cell: GuessCell, builder: Builder): void {
  const dimension = cell.unit === '' ? undefined : builder.unit(cell.unit, cell.name, cell.id);
  builder.text({
    ...{ cell: cell.id, path: cell.name, text: cell.of, kind: 'formula', title: cell.title, detail: true },
    ...{ unit: cell.unit, wants: dimension ? { dimension } : 'anything' },
    needed: `${named(cell.name)} has no answer to compute. Write the name of a result under “Set up this question”, such as “flight.pull”.`,
  });
}

/** A bare number is read in the unit of the answer, and everything has to have its dimension. */
const beside = (cell: GuessCell) =>
  ({
    cell: cell.id,
    kind: 'limit',
    like: cell.name,
    unit: '',
    wants: 'anything',
    detail: true,
  }) satisfies Partial<TextSpec>;

function layOptions(cell: GuessCell, builder: Builder, say: Say): void {
  if (cell.options.length < 2) {
    say(
      `${named(cell.name)} has ${cell.options.length === 1 ? '1 answer' : 'no answers'} to choose from. Add them under “Set up this question” until there are two or more.`,
    );
  }
  for (const [k, option] of cell.options.entries()) {
    for (const end of ENDS) {
      const title = `${cell.title}, “${option.words}” ${end === 'low' ? 'from' : 'to'}`;
      const path = `${guessOptionPath(cell, k)}.${end}`;
      builder.text({ ...beside(cell), path, text: option[end], title, blank: Number.NaN });
    }
  }
}

function checkLine(cell: GuessCell, builder: Builder, say: Say): void {
  const sweeps = cellsOf(builder.document).filter((each): each is SweepCell => each.kind === 'trial_series');
  const fit = sweeps.filter(({ axes }) => axes.length === 1);
  const sweep = sweeps.find(({ name }) => name === cell.series);
  const list =
    fit.length === 0
      ? 'There is none along one number yet; add one.'
      : `Along one number there is ${allNamed(fit.map(({ name }) => name))}.`;
  if (!sweep) {
    say(
      cell.series === ''
        ? `${named(cell.name)} has no trial series to draw over. ${list}`
        : `${named(cell.name)} is drawn over the trial series “${cell.series}”: there is none of that name. ${list}`,
    );
  } else if (sweep.axes.length !== 1) {
    say(
      `${named(cell.name)} is drawn over ${named(sweep.name)}, which runs along ${sweep.axes.length} numbers. ${list}`,
    );
  } else if (!sweep.wanted.includes(cell.of.trim())) {
    say(
      `${named(cell.name)} asks for “${cell.of}”, which ${named(sweep.name)} does not have. It has ${allNamed(sweep.wanted)}.`,
    );
  }
}
