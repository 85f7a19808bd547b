import { inUnitsOf, type Part, type PartField } from '../../../engine/index';
import { QuantitySymbol } from '../../controls/quantity-symbol';
import { TextEntry } from '../../controls/text-entry';
import { useSheet } from '../../store/context';
import { NumberMenu } from '../shared/number-menu';

/** One quantity of a part: typed as a number or a formula, shown as its value. */
export function PartQuantity({ table, part, field }: { table: string; part: Part; field: PartField }) {
  const sheet = useSheet();
  const path = `${table}.${part.name}.${field.name}`;
  const text = part.fields[field.name] ?? '';
  const docId = `doc-${path}`;
  const computed = text !== '' && sheet.isComputed(text, field.unit);
  // What is read as the mass of a part is the one that counts, weighed or not.
  const shown = text === '' ? '' : field.name === 'mass' ? text : sheet.entry(path);
  return (
    <div class="part-field">
      <span class="part-field-title">
        <NumberMenu path={path} title={field.title} /> <QuantitySymbol of={field.symbol} />
      </span>
      <TextEntry
        secondary={field.name === 'weighed'}
        path={path}
        label={`${part.title}, ${field.title.toLowerCase()}`}
        text={text}
        shown={shown}
        placeholder={inUnitsOf(blankWords(field), sheet.units())}
        fault={sheet.faultAt(path)}
        describedBy={docId}
        onCommit={(typed) => sheet.setText(path, typed)}
        onUndoBeyond={sheet.undo}
      />
      <p class="aside" id={docId}>
        {computed && <span class="written">Written as {text}. </span>}
        {inUnitsOf(field.doc, sheet.units())}
      </p>
    </div>
  );
}

function blankWords({ blank, unit }: PartField): string {
  if (blank === undefined) return 'needed';
  return Number.isNaN(blank) ? '–' : `${blank} ${unit}`;
}
