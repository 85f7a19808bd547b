/** What the command line asks for. */
export interface Request {
  readonly file: string;
  readonly set: readonly (readonly [name: string, text: string])[];
  readonly get: readonly string[];
  readonly names: boolean;
  readonly sweep: string;
  readonly json: boolean;
}

export type Arguments =
  | { readonly ask: 'run'; readonly request: Request }
  | { readonly ask: 'help' }
  | { readonly ask: 'nothing'; readonly message: string };

export const HELP = `Computes a design without a screen: the same engine and the same numbers as the page.

  npm run compute -- FILE [--set NAME=TEXT …] [--get NAME …] [--names] [--sweep CELL] [--json]

  FILE              a workbook, such as data/workbooks/quern-25.tetherwright.json
  --set NAME=TEXT   type TEXT into a variable, a choice or a field: --set "lines.length=60 ft"
  --get NAME …      print these numbers; without it, the key figures and the checks of the workbook
  --names           list every name with its unit, its kind and what it is
  --sweep CELL      run a sweep of the workbook and print its table (CSV)
  --json            print JSON, with values in SI units

Ends with 0 when everything asked for has an answer, 1 with the fault's sentence when not, 2 when the command is not understood.
`;

/** Reads the words after `--`. Options may stand in any order; `--get` takes names until the next option or file. */
export function readArguments(words: readonly string[]): Arguments {
  const set: (readonly [string, string])[] = [];
  const get: string[] = [];
  let file = '';
  let sweep = '';
  let names = false;
  let json = false;
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
      case '--set': {
        let typed = next();
        do {
          const equals = typed?.indexOf('=') ?? -1;
          if (typed === undefined || equals < 1) {
            const found = typed === undefined ? 'found nothing' : `found “${typed}”`;
            return nothing(`--set needs NAME=TEXT and ${found}. Write it like --set "lines.length=60 ft".`);
          }
          set.push([typed.slice(0, equals).trim(), typed.slice(equals + 1).trim()]);
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
      case '--sweep': {
        const typed = next();
        if (!typed)
          return nothing('--sweep needs the name of a sweep and found none. Write it like --sweep balance_sweep.');
        sweep = typed;
        break;
      }
      default:
        if (option.startsWith('-')) {
          return nothing(
            `${option} is no option here. The options are --set, --get, --names, --sweep, --json and --help.`,
          );
        }
        if (file)
          return nothing(`Two files are named, “${file}” and “${option}”. Name one; texts with spaces need quotes.`);
        file = option;
    }
  }
  if (!file)
    return nothing('No file is named. Name one, such as data/workbooks/quern-25.tetherwright.json; --help says more.');
  return { ask: 'run', request: { file, set, get, names, sweep, json } };
}

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
