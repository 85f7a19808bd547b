import { formatQuantity, isRemade, type Part, partFields, shownUnit, weighedAsTitle } from '../../../engine/index';
import { useSheet } from '../../store/context';
import { PartQuantity } from './field';

/** What the scale says beside the estimate, which gives way to it. */
export function PartScale({ table, part }: { table: string; part: Part }) {
  const sheet = useSheet();
  const path = `${table}.${part.name}`;
  const off = useDifference(path);
  return (
    <>
      {partFields(part.shape)
        .filter((field) => field.name === 'weighed')
        .map((field) => (
          <PartQuantity key={field.name} table={table} part={part} field={field} />
        ))}
      <p class="aside part-scale">
        Estimated {sheet.shown(`${path}.estimate`)}.{off !== '' && ` On the scale ${off} of it.`}
      </p>
      <RemadeWords path={path} part={part} />
    </>
  );
}

/** That it was made of something else, or otherwise, when it was weighed, so that its estimate counts. */
export function RemadeWords({ path, part }: { path: string; part: Part }) {
  const sheet = useSheet();
  if (!isRemade(path, part, sheet.value)) return null;
  const made = weighedAsTitle(sheet.document.value, part);
  const then = made === '' ? 'with another thickness or finish' : `as “${made}”`;
  return <span class="aside remade">was weighed {then}; counts as re-made, by its estimate</span>;
}

/** How much more or less the scale says than the estimate: "+1.2 g"; '' until weighed. */
export function useDifference(path: string): string {
  const sheet = useSheet();
  const difference = sheet.value(`${path}.difference`);
  const unit = sheet.name(`${path}.difference`)?.unit ?? shownUnit('g', sheet.units());
  return Number.isNaN(difference) ? '' : formatQuantity(difference, unit, { difference: true, sign: true });
}
