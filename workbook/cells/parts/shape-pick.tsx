import type { Part, PartsCell, PartShape as Shape } from '../../../engine/index';
import { useSheet } from '../../store/context';
import type { Sheet } from '../../store/sheet';
import { changePart, reshaped, withFuel } from './edits';
import { shapeList } from './shapes';

/** The shape that a part's mass is reckoned from, and whether it is fuel. */
export function PartShape({ cell, part }: { cell: PartsCell; part: Part }) {
  const sheet = useSheet();
  const { doc } = shapeList.find((each) => each.shape === part.shape)!;
  return (
    <>
      <fieldset class="part-shapes">
        <legend class="unseen">Shape of {part.title}</legend>
        {shapeList.map(({ shape, word }) => (
          <label key={shape} class={shape === part.shape ? 'picked' : ''}>
            <input
              type="radio"
              name={`shape-${cell.name}-${part.name}`}
              value={shape}
              checked={shape === part.shape}
              onChange={() => {
                const first = {
                  material: firstMaterial(sheet, shape),
                  stack: firstStack(sheet),
                  wire: firstWire(sheet),
                };
                sheet.changeCell(changePart(cell, part.name, (row) => reshaped(row, shape, first, sheet.units())));
              }}
            />
            {word}
          </label>
        ))}
        <label class="part-fuel">
          <input
            type="checkbox"
            checked={part.fuel ?? false}
            onChange={(event) => {
              const fuel = event.currentTarget.checked;
              sheet.changeCell(changePart(cell, part.name, (row) => withFuel(row, fuel)));
            }}
          />
          it is fuel
        </label>
      </fieldset>
      <p class="aside">
        {doc}
        {part.fuel && ' Its mass is that of a full tank and scales with the fuel on board.'}
      </p>
    </>
  );
}

function firstMaterial(sheet: Sheet, shape: Shape): string {
  const library = sheet.offered.peek()?.tables.find((each) => each.name === 'materials')?.rows ?? [];
  const usual =
    library.find(({ name }) => name === (shape === 'core' ? 'foam_extruded' : 'balsa_medium')) ?? library[0];
  return sheet.document.peek().rows.find((each) => each.table === 'materials')?.name ?? usual?.name ?? '';
}

const firstWire = (sheet: Sheet): string =>
  sheet.offered
    .peek()
    ?.tables.find((each) => each.name === 'wire')
    ?.rows.find((each) => each.name === 'wire_1_60')?.name ?? '';

const firstStack = (sheet: Sheet): string =>
  sheet.cells.peek().find((each) => each.kind === 'choice' && each.of === 'stack')?.name ?? '';
