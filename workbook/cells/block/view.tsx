import type { BlockCell, BlockDescription, FieldDescription } from '../../../engine/index';
import { along } from '../../controls/along';
import { CautionFor } from '../../page/standing/caution';
import { BlockPicture } from '../../pictures/index';
import { useSheet } from '../../store/context';
import { FieldRow } from './field';
import { FoundCg } from './found-cg';
import { KeepRow } from './keep-row';
import { LinkRow } from './link';
import { OtherKinds } from './other-kinds';
import { OutlineRow } from './outline';
import { ResultRow } from './result';

/** A piece of the model: the form and the results, both made from what the block declares. */
export function BlockView({ cell }: { cell: BlockCell }) {
  const sheet = useSheet();
  const block = sheet.blockNamed(cell.of);
  if (!block) return <p class="aside">There is no piece of the model called “{cell.of}”.</p>;
  return (
    <div class="block">
      <p class="aside">{block.doc}</p>
      <OtherKinds cell={cell} block={block} />
      {cell.of === 'found_cg' && <FoundCg cell={cell} />}
      <Fields cell={cell} block={block} />
      <Results cell={cell} block={block} />
      <KeepRow cell={cell} block={block} />
      <BlockPicture cell={cell} />
      <CautionFor of={block.role} cell={cell.name} />
    </div>
  );
}

function Fields({ cell, block }: { cell: BlockCell; block: BlockDescription }) {
  const sheet = useSheet();
  const links = block.fields.filter((field) => field.kind === 'link');
  const rolesOf = (fields: readonly FieldDescription[]): string =>
    fields.map((field) => field.roleWords ?? field.name).join(', ');
  const [needed, optional] = [links.filter((link) => !link.optional), links.filter((link) => link.optional)];
  // What is typed or taken from elsewhere is not folded away.
  const typed = (name: string): boolean =>
    cell.fields[name] !== undefined || sheet.name(`${cell.name}.${name}`)?.takes !== undefined;
  // In the place of these an outline is read.
  const replaced = block.outlines.flatMap(({ name, replaces }) => (cell.fields[name] ? replaces : []));
  const own = block.fields.filter((field) => field.kind !== 'link' && !replaced.includes(field.name));
  const plain = own.filter((field) => !field.advanced || typed(field.name));
  const advanced = own.filter((field) => field.advanced && !typed(field.name));
  return (
    <section aria-label={`Fields of ${cell.title}`}>
      {links.length > 0 && (
        <p class="aside">
          {needed.length > 0 && `Uses: ${rolesOf(needed)}. `}
          {optional.length > 0 && `Where it is there, also: ${rolesOf(optional)}.`}
        </p>
      )}
      {links.map((field) => (
        <LinkRow key={field.name} cell={cell} field={field} />
      ))}
      {plain.map((field) => (
        <FieldRow key={field.name} cell={cell} field={field} />
      ))}
      {block.outlines.map((outline) => (
        <OutlineRow key={outline.name} cell={cell} outline={outline} />
      ))}
      {advanced.length > 0 && (
        <details>
          <summary {...along()}>
            {advanced.length === 1 ? '1 more field' : `${advanced.length} more fields`}, each with a default
          </summary>
          {advanced.map((field) => (
            <FieldRow key={field.name} cell={cell} field={field} />
          ))}
        </details>
      )}
    </section>
  );
}

function Results({ cell, block }: { cell: BlockCell; block: BlockDescription }) {
  const numbers = block.results.filter((result) => !result.curve);
  const first = numbers.filter((result) => !result.detail);
  const detail = numbers.filter((result) => result.detail);
  return (
    <section aria-label={`Results of ${cell.title}`}>
      <h3>Results</h3>
      {first.map((result) => (
        <ResultRow key={result.name} cell={cell} result={result} />
      ))}
      {detail.length > 0 && (
        <details>
          <summary {...along()}>{detail.length === 1 ? '1 more result' : `${detail.length} more results`}</summary>
          {detail.map((result) => (
            <ResultRow key={result.name} cell={cell} result={result} />
          ))}
        </details>
      )}
    </section>
  );
}
