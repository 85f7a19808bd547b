import type { Part } from '../../../engine/index';
import { along } from '../../controls/along';
import { TextEntry } from '../../controls/text-entry';
import { useSheet } from '../../store/context';
import { MomentBar } from './moment-bar';
import { RemadeWords, useDifference } from './scale-said';
import { shapeWords } from './shapes';

interface PartRowProps {
  readonly table: string;
  readonly part: Part;
  readonly isOpen: boolean;
  readonly most: number;
  onOpen(name: string): void;
}

/** One part of the table. Its name opens everything that can be said of it. */
export function PartRow({ table, part, isOpen, most, onOpen }: PartRowProps) {
  const sheet = useSheet();
  const path = `${table}.${part.name}`;
  const fault = sheet.faultWithin(path);
  const off = useDifference(path);
  return (
    <tr data-part={part.name} class={isOpen ? 'open' : ''}>
      <th scope="row">
        <button
          type="button"
          {...along()}
          class="word part-title"
          aria-expanded={isOpen}
          aria-controls={`part-${path}`}
          onClick={() => onOpen(part.name)}
        >
          <span class="part-name">{part.title || part.name}</span>
          <span class="words"> {shapeWords(part)}</span>
        </button>
        <RemadeWords path={path} part={part} />
        {fault && !isOpen && <span class="fault-words">{fault.message}</span>}
      </th>
      <td data-label="mass" class="part-mass">
        <span data-value={`${path}.mass`}>{sheet.shown(`${path}.mass`)}</span>
        {off !== '' && (
          <span class="difference">
            <span class="unseen">estimate {sheet.shown(`${path}.estimate`)}, </span>
            {off}
          </span>
        )}
      </td>
      <td data-label="weighed" class="weighed">
        <TextEntry
          path={`${path}.weighed`}
          label={`${part.title}, weighed`}
          text={part.fields.weighed ?? ''}
          shown={(part.fields.weighed ?? '') === '' ? '' : sheet.entry(`${path}.weighed`)}
          placeholder="–"
          fault={sheet.faultAt(`${path}.weighed`)}
          onCommit={(text) => sheet.setText(`${path}.weighed`, text)}
          onUndoBeyond={sheet.undo}
        />
      </td>
      {['x', 'y', 'z'].map((axis) => (
        <td key={axis} data-label={axis} data-value={`${path}.${axis}`}>
          {sheet.shown(`${path}.${axis}`)}
        </td>
      ))}
      <td data-label="moment" class="moment-cell">
        <MomentBar path={path} most={most} />
      </td>
    </tr>
  );
}
