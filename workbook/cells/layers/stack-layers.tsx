import { useSignal } from '@preact/signals';
import { type ChoiceCell, type ChoiceOption, freeName } from '../../../engine/index';
import { along } from '../../controls/along';
import { RowPick } from '../../library/row-pick';
import { numberTold } from '../../library/told';
import { useSheet } from '../../store/context';
import { firstThickness, withLayer } from './edits';
import { LayerRow } from './layer-row';

/** Name of the material of a first layer. */
const USUAL = 'balsa_medium';

/** What each option of a choice of stacks is made of, from one face to the other. */
export function StackLayers({ cell }: { cell: ChoiceCell }) {
  return (
    <details class="layers">
      <summary {...along()}>What each is made of, from one face to the other</summary>
      {cell.options.map((option) => (
        <Stack key={option.name} cell={cell} option={option} />
      ))}
    </details>
  );
}

function Stack({ cell, option }: { cell: ChoiceCell; option: ChoiceOption }) {
  const sheet = useSheet();
  const path = `${cell.name}.${option.name}`;
  const layers = option.layers ?? [];
  const stiffness = sheet.shown(`${path}.stiffness`);
  return (
    // biome-ignore lint/a11y/useSemanticElements: nothing in it is a form of its own.
    <div role="group" class="layer-stack" aria-label={`${option.title}, layers`}>
      <h3>{option.title}</h3>
      {layers.length === 0 && <p>No layers yet: add a sheet first, or a skin.</p>}
      <ol>
        {layers.map((layer, k) => (
          <LayerRow key={layer.name} cell={cell} option={option} layer={layer} at={k} />
        ))}
      </ol>
      <p class="aside">
        Together {sheet.shown(`${path}.areal_mass`)}, {sheet.shown(`${path}.thickness`)} thick,{' '}
        {stiffness === '–' ? 'stiffness not known: a modulus is missing' : `bending stiffness ${stiffness} per width`}.
      </p>
      <AddLayer cell={cell} option={option} />
    </div>
  );
}

function AddLayer({ cell, option }: { cell: ChoiceCell; option: ChoiceOption }) {
  const sheet = useSheet();
  const finishes = sheet.tableNamed('finishes');
  const glues = finishes && { ...finishes, rows: finishes.rows.filter((row) => row.group === 'glue') };
  const picked = useSignal('');
  const glue = picked.value || (glues?.rows[0]?.name ?? '');
  const taken = new Set([...(option.layers ?? []).map((layer) => layer.name), 'areal_mass', 'thickness', 'stiffness']);
  const add = (wanted: string, material: string, text: string): void =>
    sheet.changeCell(withLayer(cell, option.name, { name: freeName(wanted, taken), material, text }));
  // As the sheet before it, else the wood that most tails are of: it has a modulus, so that the stack keeps its stiffness.
  const library = sheet.tableNamed('materials')?.rows ?? [];
  const usual = library.find((row) => row.name === USUAL) ?? library[0];
  const before = option.layers?.findLast((layer) => layer.material !== '')?.material;
  const first = before ?? usual?.name ?? '';
  return (
    <div class="part-commands">
      <button type="button" class="word" onClick={() => add('layer', first, firstThickness(sheet.units()))}>
        Add a sheet<span class="unseen"> to {option.title}</span>
      </button>
      {glues && (
        <>
          <button type="button" class="word" onClick={() => add('glue', '', `${glue}.areal_mass`)}>
            Add a glue line<span class="unseen"> to {option.title}</span>
          </button>
          <RowPick
            table={glues}
            label={`${option.title}, glue to add`}
            value={glue}
            words={(row) => `${row.title}, ${numberTold(glues.columns[0]!, row, sheet.units())}`}
            onPick={(name) => {
              picked.value = name;
            }}
          />
        </>
      )}
    </div>
  );
}
