import { useSignal } from '@preact/signals';
import { type Part, partFields } from '../../../engine/index';
import { OwnRows } from '../../library/own-rows';
import { RowPick } from '../../library/row-pick';
import { SourceTold } from '../../library/row-told';
import { numberTold } from '../../library/told';
import { useSheet } from '../../store/context';
import { type Coat, readCoats, withCoat, writeCoats } from './coats';
import { PartQuantity } from './field';

/** Finish by coat: what is on it, how many coats of each, over which area. */
export function PartFinish({ table, part }: { table: string; part: Part }) {
  const sheet = useSheet();
  const path = `${table}.${part.name}.coat`;
  const coats = readCoats(part.fields.coat ?? '');
  const fields = partFields(part.shape).filter(({ name }) => name === 'coats_area' || name === 'coat');
  const put = (next: readonly Coat[]): void => sheet.setText(path, writeCoats(next));
  return (
    <>
      {fields.map((field) => (
        <PartQuantity key={field.name} table={table} part={part} field={field} />
      ))}
      {coats.length > 0 && (
        <ul class="coats">
          {coats.map((coat, k) => (
            <CoatRow
              key={k}
              coat={coat}
              part={part}
              onCount={(count) => put('finish' in coat ? coats.with(k, { ...coat, count }) : coats)}
              onRemove={() => put(coats.toSpliced(k, 1))}
            />
          ))}
        </ul>
      )}
      <AddCoat part={part} onAdd={(finish) => put(withCoat(coats, finish))} />
    </>
  );
}

function CoatRow(props: { coat: Coat; part: Part; onCount(count: number): void; onRemove(): void }) {
  const { coat, part, onCount, onRemove } = props;
  const sheet = useSheet();
  const table = sheet.tableNamed('finishes');
  const finish = table?.rows.find((each) => 'finish' in coat && each.name === coat.finish);
  const own = sheet.part('rows').find((each) => 'finish' in coat && each.name === coat.finish);
  const title = own?.title ?? finish?.title ?? ('finish' in coat ? coat.finish.replaceAll('_', ' ') : coat.text);
  return (
    <li>
      {'finish' in coat ? (
        <input
          type="number"
          class="text-entry coat-count"
          aria-label={`${part.title}, how many times: ${title}`}
          min={1}
          max={99}
          value={coat.count}
          onChange={(event) => {
            const count = Math.round(event.currentTarget.valueAsNumber);
            if (count >= 1 && count <= 99) onCount(count);
            else event.currentTarget.value = String(coat.count);
          }}
        />
      ) : (
        <span />
      )}
      <span>
        {'finish' in coat && '× '}
        {title}
        {own && (
          <span class="aside">
            {' '}
            {sheet.shown(`${own.name}.areal_mass`)}. Own finish. Source: {own.source}
          </span>
        )}
        {finish && !own && (
          <span class="aside">
            {' '}
            {numberTold(table!.columns[0]!, finish, sheet.units())}. <SourceTold row={finish} />
          </span>
        )}
      </span>
      <button type="button" class="word quiet" onClick={onRemove}>
        Remove<span class="unseen"> {title}</span>
      </button>
    </li>
  );
}

function AddCoat({ part, onAdd }: { part: Part; onAdd(finish: string): void }) {
  const sheet = useSheet();
  const table = sheet.tableNamed('finishes');
  const picked = useSignal('');
  const name = picked.value || (table?.rows[0]?.name ?? '');
  return (
    <div class="add-coat">
      {table && (
        <RowPick
          table={table}
          label={`${part.title}, coat to add`}
          value={name}
          words={(row) => `${row.title}, ${numberTold(table.columns[0]!, row, sheet.units())}`}
          onPick={(finish) => {
            picked.value = finish;
          }}
        />
      )}
      <button type="button" class="word" disabled={name === ''} onClick={() => onAdd(name)}>
        Add a coat
      </button>
      {table && <OwnRows table={table} onAdd={(row) => onAdd(row.name)} />}
    </div>
  );
}
