import {
  type BlockCell,
  type FieldDescription,
  fieldAnchor,
  inSentence,
  inUnitsOf,
  type UnitSet,
} from '../../../engine/index';
import { WayTo } from '../../controls/fault-flag';
import { QuantitySymbol } from '../../controls/quantity-symbol';
import { TextEntry } from '../../controls/text-entry';
import { useSheet } from '../../store/context';
import { NumberMenu } from '../shared/number-menu';
import { RowFaults } from '../shared/row-faults';

/** Digits of a default that is told in other units than it is declared in. */
const DEFAULT_DIGITS = 4;

/** One field of a block: what is typed, or what stands in its place with where it comes from: a piece that is there, or the default. */
export function FieldRow({ cell, field }: { cell: BlockCell; field: FieldDescription }) {
  const sheet = useSheet();
  const path = `${cell.name}.${field.name}`;
  const text = cell.fields[field.name] ?? '';
  const docId = `doc-${cell.id}-${field.name}`;
  const takes = text === '' ? sheet.name(path)?.takes : undefined;
  const computed = text !== '' && !field.options?.includes(text) && sheet.isComputed(text, field.unit);
  return (
    <div class="field">
      <QuantitySymbol of={field.symbol} />
      <span class="field-title">
        <NumberMenu path={path} title={field.title} to={fieldAnchor(cell.of, field.name)} />
      </span>
      {field.kind === 'option' ? (
        <OptionEntry path={path} text={text} field={field} docId={docId} />
      ) : (
        <TextEntry
          class="field-entry"
          path={path}
          label={field.title}
          text={text}
          shown={text === '' ? '' : sheet.entry(path)}
          placeholder={takes === undefined ? defaultOf(field, sheet.units()) : sheet.shown(takes)}
          fault={sheet.faultAt(path)}
          faultElsewhere
          describedBy={docId}
          onCommit={(typed) => sheet.setText(path, typed)}
          onUndoBeyond={sheet.undo}
        />
      )}
      <span class="change">{text === '' ? '' : sheet.change(path)}</span>
      <p class="aside field-doc" id={docId}>
        {computed && <span>Written as {text}. </span>}
        {inUnitsOf(field.doc, sheet.units())} {takes !== undefined && <Taken from={takes} />}
        {text === '' && takes === undefined && field.basis !== '' && (
          <span>Default: {inUnitsOf(field.basis, sheet.units())} </span>
        )}
        {field.source !== '' && <span>Source: {field.source}</span>}
      </p>
      <RowFaults paths={[path]} />
    </div>
  );
}

const defaultOf = ({ default: text }: FieldDescription, units: UnitSet): string =>
  text === '' ? 'estimated' : inUnitsOf(text, units, DEFAULT_DIGITS);

/** "Taken from Lap in wind: greatest pull at the handle.", with the way there. */
function Taken({ from }: { from: string }) {
  const sheet = useSheet();
  const cell = sheet.cellHolding(from) ?? '';
  return (
    <span data-taken={from}>
      Taken from <WayTo place={{ cell, path: from }}>{sheet.placeTitle({ cell, path: '' })}</WayTo>:{' '}
      {inSentence(sheet.name(from)?.title ?? from)}. Type here to have another.{' '}
    </span>
  );
}

function OptionEntry(props: { path: string; text: string; field: FieldDescription; docId: string }) {
  const { path, text, field, docId } = props;
  const sheet = useSheet();
  const options = field.options ?? [];
  const picked = text === '' ? field.default : text;
  // A choice of the sheet whose options all are options here can decide in their place.
  const choices = sheet.cells.value.filter(
    (each) =>
      each.kind === 'choice' && each.options.length > 0 && each.options.every(({ name }) => options.includes(name)),
  );
  const known = [...options, ...choices.map(({ name }) => name)];
  // What else stands there, a formula, is kept as one more line of the list.
  const listed = known.includes(picked) ? options : [...options, picked];
  return (
    <select
      class="field-entry"
      data-path={path}
      aria-label={field.title}
      aria-describedby={docId}
      value={picked}
      onChange={(event) => sheet.setText(path, event.currentTarget.value)}
    >
      {listed.map((option) => (
        <option key={option} value={option}>
          {option.replaceAll('_', ' ')}
        </option>
      ))}
      {choices.map(({ name, title }) => (
        <option key={name} value={name}>
          as chosen in {title || name}
        </option>
      ))}
    </select>
  );
}
