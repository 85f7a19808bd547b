/** One line of a list to pick from. */
export interface PickOption {
  readonly value: string;
  readonly title: string;
  /** Options of one group stand together under its title. */
  readonly group?: string;
}

/** Lines that are shown at once: as many as somebody reads before typing is quicker. */
const MOST_SHOWN = 40;

export interface Found {
  readonly shown: readonly PickOption[];
  /** Options that fit and are not shown. */
  readonly more: number;
}

/**
 * The options whose title or group has a word that begins with each word of what is typed, in the order of the list; those
 * whose title begins with it stand first, and the list keeps its groups together.
 */
export function findOptions(options: readonly PickOption[], typed: string): Found {
  const words = wordsOf(typed);
  const fitting = words.length === 0 ? options : options.filter((option) => fits(option, words));
  const first = plain(typed);
  const begins = (option: PickOption): boolean => words.length > 0 && plain(option.title).startsWith(first);
  const all = together([...fitting.filter(begins), ...fitting.filter((option) => !begins(option))]);
  return { shown: all.slice(0, MOST_SHOWN), more: Math.max(0, all.length - MOST_SHOWN) };
}

/** Whatever its accents and capitals. */
const plain = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().trim();
const wordsOf = (text: string): readonly string[] =>
  plain(text)
    .split(/[^\p{L}\p{N}.]+/u)
    .filter(Boolean);

function fits({ title, group = '' }: PickOption, words: readonly string[]): boolean {
  const there = wordsOf(`${title} ${group}`);
  return words.every((word) => there.some((each) => each.startsWith(word)));
}

/** Groups in the order in which they come first, each with all of its options behind it. */
function together(options: readonly PickOption[]): readonly PickOption[] {
  const groups = new Set(options.map(({ group }) => group));
  return [...groups].flatMap((group) => options.filter((option) => option.group === group));
}
