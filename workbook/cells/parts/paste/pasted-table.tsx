import type { Part } from '../../../../engine/index';
import { useSheet } from '../../../store/context';
import { ColumnsTable } from '../../shared/columns-table';
import type { PasteColumn } from '../../shared/paste-columns';
import { shapeWords } from '../shapes';
import { TARGETS } from './columns';

interface Props {
  readonly columns: readonly PasteColumn[];
  readonly lines: readonly { readonly line: number; readonly fields: readonly string[] }[];
  readonly parts: readonly Part[];
  onMatch(columns: readonly PasteColumn[]): void;
}

/** So many lines show how the rest is read. */
const SHOWN = 4;

/** The first lines under what each column is matched to, and the parts that come of them. */
export function PastedTable({ columns, lines, parts, onMatch }: Props) {
  const sheet = useSheet();
  return (
    <>
      <ColumnsTable columns={columns} lines={lines} targets={TARGETS} units={sheet.units()} onMatch={onMatch} />
      {parts.length > 0 && (
        <ul class="paste-preview">
          {parts.slice(0, SHOWN).map((part) => (
            <li key={part.name}>
              <strong>{part.title}</strong>: {partWords(part)}
            </li>
          ))}
          {parts.length > SHOWN && <li class="aside">and {parts.length - SHOWN} more</li>}
        </ul>
      )}
    </>
  );
}

/** "weight, 4 of them; mass 1.2 g; x −90 mm" */
function partWords(part: Part): string {
  const { mass, weighed, x, y, z } = part.fields;
  const said = { ...(part.shape === 'point' && { mass }), weighed, x, y, z };
  const texts = Object.entries(said).flatMap(([name, text]) =>
    text ? [`${name} ${text.replaceAll(' ', '\u00a0').replace(/^-/, '−')}`] : [],
  );
  return [shapeWords(part), ...texts].join('; ');
}
