import { DESIGNS_FORMAT, DESIGNS_VERSION, type Document } from './document';
import {
  isRecord,
  type Opened,
  openData,
  openText,
  type Refused,
  readData,
  refuse,
  refuseAll,
  serialise,
  tooLarge,
} from './file';
import { type FileProblem, problem } from './validate';

/** Bytes of the largest file with several designs that is read. */
const LARGEST_FILE_OF_DESIGNS = 50_000_000;

/** One design, or those of a file that holds several. */
export type OpenedDesigns = Opened | { readonly ok: true; readonly designs: readonly Document[] };

/** The refusal of a file of so many bytes, to be asked before it is read; undefined for one that may be read. */
export const tooLargeForAny = (bytes: number): Refused | undefined => tooLarge(bytes, LARGEST_FILE_OF_DESIGNS);

/** Reads the text of a file with one design or several. */
export function openDesigns(text: string): OpenedDesigns {
  const refused = tooLargeForAny(text.length);
  if (refused) return refused;
  const read = readData(text);
  if (!read.ok) return read;
  if (isRecord(read.file) && read.file.format === DESIGNS_FORMAT) return openTogether(read.file);
  return openText(text);
}

function openTogether(file: Readonly<Record<string, unknown>>): OpenedDesigns {
  const { format: _, version, designs, ...others } = file;
  if (typeof version === 'number' && version > DESIGNS_VERSION) {
    const message = `This file with several designs was written by a newer Tetherwright (version ${version}; this one reads up to ${DESIGNS_VERSION}). Nothing was opened. Load the newest Tetherwright and open the file there.`;
    return refuse(message, [problem('version', `at most ${DESIGNS_VERSION}`, String(version))]);
  }
  const [unknown] = Object.keys(others);
  if (unknown !== undefined) return refuseAll([problem(unknown, 'nothing of that name', 'a value')]);
  if (version !== DESIGNS_VERSION) {
    return refuseAll([problem('version', String(DESIGNS_VERSION), JSON.stringify(version) ?? 'nothing')]);
  }
  if (!Array.isArray(designs) || designs.length === 0) {
    return refuseAll([
      problem('designs', 'a list of at least one design', Array.isArray(designs) ? 'an empty list' : 'nothing'),
    ]);
  }
  const opened = designs.map((design) => openData(design));
  const problems = opened.flatMap((each, k) => (each.ok ? [] : each.problems.map((of) => within(`designs[${k}]`, of))));
  if (problems.length > 0) return refuseAll(problems);
  return { ok: true, designs: opened.flatMap((each) => (each.ok ? [each.document] : [])) };
}

const within = (place: string, { path, expected, found }: FileProblem): FileProblem =>
  problem(path === '' ? place : `${place}.${path}`, expected, found);

/** The text of a file with these designs. */
export const serialiseDesigns = (designs: readonly Document[]): string =>
  `${JSON.stringify(
    {
      format: DESIGNS_FORMAT,
      version: DESIGNS_VERSION,
      designs: designs.map((design) => JSON.parse(serialise(design))),
    },
    undefined,
    2,
  )}\n`;
