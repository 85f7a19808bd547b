import { type ChoiceCell, type ChoiceOption, type Layer, rename } from '../../../engine/index';
import { TextEntry } from '../../controls/text-entry';
import { useSheet } from '../../store/context';
import { MaterialList } from '../parts/stuff';
import { RowFaults } from '../shared/row-faults';
import { movedLayer, remade, withoutLayer } from './edits';

interface LayerProps {
  readonly cell: ChoiceCell;
  readonly option: ChoiceOption;
  readonly layer: Layer;
  readonly at: number;
}

/** One layer: its name, what it is, and how thick or how heavy. */
export function LayerRow({ cell, option, layer, at }: LayerProps) {
  const sheet = useSheet();
  const path = `${cell.name}.${option.name}.${layer.name}`;
  const label = `${option.title}, ${layer.name.replaceAll('_', ' ')}`;
  const last = (option.layers?.length ?? 0) - 1;
  const setName = (name: string): void => {
    sheet.edit((document) => {
      const renamed = rename(document, path, name);
      if (renamed.ok) return renamed.changes;
      sheet.tell({ title: `${label} keeps its name.`, sentences: [renamed.message] });
      return [];
    }, label);
  };
  return (
    <li>
      <TextEntry
        path={`${path}#name`}
        label={`${label}, name`}
        text={layer.name}
        shown={layer.name}
        onCommit={setName}
        onUndoBeyond={sheet.undo}
      />
      <MaterialList
        path={`${path}.material`}
        label={`${label}, material`}
        text={layer.material}
        blank="glue line or skin, by its mass"
        onPick={(material) => sheet.setTexts(remade(path, layer, material, sheet.units()), label)}
      />
      <TextEntry
        path={path}
        label={`${label}, ${layer.material === '' ? 'mass per area' : 'thickness'}`}
        text={layer.text}
        shown={sheet.entry(path)}
        fault={sheet.faultAt(path)}
        faultElsewhere
        onCommit={(text) => sheet.setText(path, text)}
        onUndoBeyond={sheet.undo}
      />
      <span class="layer-commands">
        <Command
          words="Up"
          of={label}
          off={at === 0}
          onPress={() => sheet.changeCell(movedLayer(cell, option.name, layer.name, -1))}
        />
        <Command
          words="Down"
          of={label}
          off={at === last}
          onPress={() => sheet.changeCell(movedLayer(cell, option.name, layer.name, 1))}
        />
        <Command
          words="Remove"
          of={label}
          off={false}
          onPress={() => sheet.changeCell(withoutLayer(cell, option.name, layer.name))}
        />
      </span>
      <RowFaults paths={[path, `${path}.material`]} />
    </li>
  );
}

function Command({ words, of, off, onPress }: { words: string; of: string; off: boolean; onPress(): void }) {
  return (
    <button type="button" class="word quiet" disabled={off} onClick={onPress}>
      {words}
      <span class="unseen"> {of}</span>
    </button>
  );
}
