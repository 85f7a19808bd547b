import type { BlockCell, BlockDescription } from '../../../engine/index';
import { CautionFor } from '../../page/standing/caution';
import { BlockPicture } from '../../pictures/index';
import { useSheet } from '../../store/context';
import { FieldRow } from './field';
import { LinkRow } from './link';
import { ResultRow } from './result';

/** A piece of the model: the form and the results, both made from what the block declares. */
export function BlockView({ cell }: { cell: BlockCell }) {
  const sheet = useSheet();
  const block = sheet.blockNamed(cell.of);
  if (!block) return <p class="aside">There is no piece of the model called “{cell.of}”.</p>;
  return (
    <div class="block">
      <p class="aside">{block.doc}</p>
      <Fields cell={cell} block={block} />
      <Results cell={cell} block={block} />
      <BlockPicture cell={cell} />
      <CautionFor of={block.role} cell={cell.name} />
    </div>
  );
}

function Fields({ cell, block }: { cell: BlockCell; block: BlockDescription }) {
  const links = block.fields.filter((field) => field.kind === 'link');
  const typed = (name: string): boolean => cell.fields[name] !== undefined;
  const own = block.fields.filter((field) => field.kind !== 'link');
  const plain = own.filter((field) => !field.advanced || typed(field.name));
  const advanced = own.filter((field) => field.advanced && !typed(field.name));
  return (
    <section aria-label={`Fields of ${cell.title}`}>
      {links.length > 0 && <p class="aside">Uses: {links.map((field) => field.roleWords ?? field.name).join(', ')}.</p>}
      {links.map((field) => (
        <LinkRow key={field.name} cell={cell} field={field} />
      ))}
      {plain.map((field) => (
        <FieldRow key={field.name} cell={cell} field={field} />
      ))}
      {advanced.length > 0 && (
        <details>
          <summary>
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
          <summary>{detail.length === 1 ? '1 more result' : `${detail.length} more results`}</summary>
          {detail.map((result) => (
            <ResultRow key={result.name} cell={cell} result={result} />
          ))}
        </details>
      )}
    </section>
  );
}
