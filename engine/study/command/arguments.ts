/** What the command line asks for. */
export interface Request {
  readonly file: string;
  readonly set: readonly (readonly [name: string, text: string])[];
  readonly get: readonly string[];
  readonly names: boolean;
  readonly sweep: string;
  /** What may differ from what is typed, as written: "normal 2 g". */
  readonly spread: readonly (readonly [name: string, text: string])[];
  /** Name of a spread of the workbook; '' where none is asked for. */
  readonly spreadCell: string;
  /** Missing: as many as the spread itself says. */
  readonly samples?: number;
  readonly seed?: number;
  /** Name of levers of the workbook; '' where none are asked for. */
  readonly levers: string;
  /** Name of a list of what mends; '' where none is asked for. */
  readonly mends: string;
  /** Name of best compromises; '' where none are asked for. */
  readonly best: string;
  /** Name of a bench; '' where none is asked for. */
  readonly weighing: string;
  /** Name of a piece that has found the CG; '' where none is asked for. */
  readonly reconcile: string;
  /** Name of a table of variants; '' where none is asked for. */
  readonly variants: string;
  /** Name of the variant to compute in the place of the design as set; '' for the design. */
  readonly variant: string;
  readonly json: boolean;
}

export type Arguments =
  | { readonly ask: 'run'; readonly request: Request }
  | { readonly ask: 'help' }
  | { readonly ask: 'nothing'; readonly message: string };

export const HELP = `Computes a design without a screen: the same engine and the same numbers as the page.

  npm run compute -- FILE [--variant NAME] [--set NAME=TEXT …] [--get NAME …] [--names] [--series NAME] [--helps NAME]
                         [--mends NAME] [--best NAME] [--weighing NAME] [--reconcile NAME] [--variants NAME] [--tolerances NAME |
                         --tolerances NAME=KIND … [--samples N] [--seed S]] [--json]

  FILE              a design, such as data/designs/quern-25.tetherwright.json
  --variant NAME    compute this variant of the design in its place
  --set NAME=TEXT   type TEXT into a variable, a choice or a field: --set "lines.length=60 ft"
  --get NAME …      print these numbers; without it, the key figures, the checks and the fits of the
                    design
  --names           list every name with its unit, its kind and what it is
  --series NAME     run a trial series of the design and print its table (CSV)
  --helps NAME      try changes of the design one at a time and print what helps most, ranked
  --mends NAME      print what would bring a result where this list wants it, the cheapest first
  --best NAME       print the best compromises: designs that no other beats in everything that is wanted
  --weighing NAME   print what this bench tells: the CG when finished, what the rest may weigh, which part is next
  --reconcile NAME  print how the CG found stands to the table of parts, and what the table may lack
  --variants NAME   print the table of variants of the design: results, differences and what makes them
  --tolerances NAME
                    print what these tolerances of the design make of its results
  --tolerances NAME=KIND AMOUNT …
                    let these differ from what is typed: "tip_weight=normal 2 g" (standard deviation), "uniform 1 mm" or
                    "triangular 1 mm" (as much to both sides); prints mean, deviation and percentiles of what --get names, or of the
                    key figures, and the share of their variance that each accounts for, by itself and with all others
  --samples N       how many designs the tolerances take; if not said, as many as the file says, or 1000
  --seed S          a whole number that gives the same designs again; if not said, that of the file, or 1
  --json            print JSON, with values in SI units

Ends with 0 when everything asked for has an answer, 1 with the sentence of the fault when not, 2 when the command is not understood.
`;

/** Options that take one name of the design, each with what it names and an example. */
const ONE_NAME = {
  '--series': { field: 'sweep', what: 'a trial series', like: 'balance_series' },
  '--helps': { field: 'levers', what: 'a list of what helps most', like: 'pull_helps' },
  '--mends': { field: 'mends', what: 'a list of what mends', like: 'cg_mends' },
  '--best': { field: 'best', what: 'best compromises', like: 'weight_or_pull' },
  '--weighing': { field: 'weighing', what: 'a bench', like: 'bench' },
  '--reconcile': { field: 'reconcile', what: 'a piece that has found the CG', like: 'found_cg' },
  '--variants': { field: 'variants', what: 'a table of variants', like: 'side_by_side' },
  '--variant': { field: 'variant', what: 'a variant', like: '"Ply tail"' },
} as const;

/** Reads the words after `--`. Options may stand in any order; `--get` takes names until the next option or file. */
export function readArguments(words: readonly string[]): Arguments {
  const set: (readonly [string, string])[] = [];
  const get: string[] = [];
  let file = '';
  const named = { sweep: '', levers: '', mends: '', best: '', weighing: '', reconcile: '', variants: '', variant: '' };
  let names = false;
  let json = false;
  const spread: (readonly [string, string])[] = [];
  let spreadCell = '';
  const whole: Partial<Record<'--samples' | '--seed', number>> = {};
  for (let k = 0; k < words.length; k++) {
    const { option, inline } = split(words[k]!);
    const next = (): string | undefined => inline ?? (isOption(words[k + 1]) ? undefined : words[++k]);
    switch (option) {
      case '--help':
      case '-h':
        return { ask: 'help' };
      case '--names':
        names = true;
        break;
      case '--json':
        json = true;
        break;
      case '--samples':
      case '--seed': {
        const typed = next();
        const number = Number(typed ?? Number.NaN);
        const least = option === '--samples' ? 2 : 0;
        if (!Number.isInteger(number) || number < least || number > MOST_SAMPLES) {
          const found = typed === undefined ? 'found none' : `found “${typed}”`;
          return nothing(`${option} needs a whole number from ${least} to ${MOST_SAMPLES} and ${found}.`);
        }
        whole[option] = number;
        break;
      }
      case '--tolerances':
      case '--set': {
        const list = option === '--set' ? set : spread;
        const example = option === '--set' ? 'lines.length=60 ft' : 'tip_weight=normal 2 g';
        const wanted = option === '--set' ? 'NAME=TEXT' : 'NAME=KIND AMOUNT or the name of tolerances';
        let typed = next();
        if (option === '--tolerances' && typed !== undefined && /^[a-z_]\w*$/i.test(typed)) {
          spreadCell = typed;
          break;
        }
        do {
          const equals = typed?.indexOf('=') ?? -1;
          if (typed === undefined || equals < 1) {
            const found = typed === undefined ? 'found nothing' : `found “${typed}”`;
            return nothing(`${option} needs ${wanted} and ${found}. Write it like ${option} "${example}".`);
          }
          list.push([typed.slice(0, equals).trim(), typed.slice(equals + 1).trim()]);
          typed =
            inline === undefined && !isOption(words[k + 1]) && words[k + 1]!.includes('=') ? words[++k] : undefined;
        } while (typed !== undefined);
        break;
      }
      case '--get': {
        const first = next();
        if (!first)
          return nothing('--get needs a name and found none. Write it like --get flight.pull; --names lists them all.');
        get.push(first);
        while (inline === undefined && !isOption(words[k + 1]) && !isFile(words[k + 1]!)) get.push(words[++k]!);
        break;
      }
      case '--series':
      case '--helps':
      case '--mends':
      case '--best':
      case '--weighing':
      case '--reconcile':
      case '--variants':
      case '--variant': {
        const typed = next();
        const { field, what, like } = ONE_NAME[option];
        if (!typed)
          return nothing(`${option} needs the name of ${what} and found none. Write it like ${option} ${like}.`);
        named[field] = typed;
        break;
      }
      default:
        if (option.startsWith('-')) {
          return nothing(
            `${option} is no option here. The options are --set, --get, --names, --series, --helps, --mends, --best, --weighing, --reconcile, --variants, --variant, --tolerances, --samples, --seed, --json and --help.`,
          );
        }
        if (file)
          return nothing(`Two files are named, “${file}” and “${option}”. Name one; texts with spaces need quotes.`);
        file = option;
    }
  }
  if (!file)
    return nothing('No file is named. Name one, such as data/designs/quern-25.tetherwright.json; --help says more.');
  return {
    ask: 'run',
    request: {
      ...{ file, set, get, names, ...named, spread, spreadCell, json },
      ...(whole['--samples'] === undefined ? {} : { samples: whole['--samples'] }),
      ...(whole['--seed'] === undefined ? {} : { seed: whole['--seed'] }),
    },
  };
}

/** More designs than this take longer than anybody waits. */
const MOST_SAMPLES = 1_000_000;

const nothing = (message: string): Arguments => ({ ask: 'nothing', message });

const isOption = (word: string | undefined): boolean => word === undefined || word.startsWith('--');
const isFile = (word: string): boolean => /[\\/]|\.json$/.test(word);

/** `--set=a=b` is `--set` with `a=b` behind it. */
function split(word: string): { option: string; inline?: string } {
  const equals = word.indexOf('=');
  return word.startsWith('--') && equals > 0
    ? { option: word.slice(0, equals), inline: word.slice(equals + 1) }
    : { option: word };
}
