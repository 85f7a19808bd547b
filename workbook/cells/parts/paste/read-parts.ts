import type { Between } from '../../../../engine/index';
import { freeName, nameFault, nameFromTitle, type Part, readCsvLines } from '../../../../engine/index';
import type { PasteColumn } from '../../shared/paste-columns';
import { type Reading, readRow } from './read-row';

export interface PastedParts {
  readonly parts: readonly Part[];
  readonly faults: readonly { readonly line: number; readonly message: string }[];
  /** Lines that are left out because the program wrote them itself: its totals. */
  readonly totals: number;
}

/** The title of the last line of a saved table. */
const OWN_TOTAL = 'all parts, fuel as set';

/** Every line below the heading as a part, each with a name that nothing else has. */
export function readParts(
  text: string,
  between: Between,
  columns: readonly PasteColumn[],
  reading: Reading,
  taken: ReadonlySet<string>,
): PastedParts {
  const names = new Set(taken);
  const parts: Part[] = [];
  const faults: { line: number; message: string }[] = [];
  let totals = 0;
  const at = columns.findIndex(({ to }) => to === 'title');
  for (const { line, fields } of readCsvLines(text, between).slice(1)) {
    if (fields.every((field) => field.trim() === '')) continue;
    if (fields[at]?.trim() === OWN_TOTAL) {
      totals++;
      continue;
    }
    if (fields.length !== columns.length) {
      const message = `has ${counted(fields.length)}; the heading has ${columns.length}. A field with the separator in it stands in double quotes.`;
      faults.push({ line, message });
      continue;
    }
    const read = readRow(fields, columns, reading);
    if ('faults' in read) {
      faults.push(...read.faults.map((message) => ({ line, message })));
      continue;
    }
    const wanted = nameFault(read.name) === undefined ? read.name : nameFromTitle(read.part.title) || 'part';
    const name = freeName(wanted, names);
    names.add(name);
    parts.push({ name, ...read.part });
  }
  return { parts, faults, totals };
}

const counted = (count: number): string => (count === 1 ? '1 field' : `${count} fields`);
