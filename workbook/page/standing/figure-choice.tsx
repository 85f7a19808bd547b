import type { NameInfo } from '../../../engine/index';
import { AddFrom, nameOptions } from '../../cells/index';
import { along } from '../../controls/along';
import { useSheet } from '../../store/context';

/** Which results are key figures and in which order; the first three stand on the strip of a phone. */
export function FigureChoice() {
  const sheet = useSheet();
  const figures = sheet.part('figures');
  const put = (next: readonly string[]): void => sheet.changeHead({ figures: next }, 'key figures');
  return (
    <details class="figure-choice">
      <summary {...along()}>Choose the key figures</summary>
      <p class="aside">The first three stand at the top of a phone.</p>
      <ol>
        {figures.map((path, index) => {
          const title = sheet.name(path)?.title ?? path;
          return (
            <li key={path}>
              <span>{title}</span>
              <button
                type="button"
                class="word quiet"
                disabled={index === 0}
                aria-label={`Move up: ${title}`}
                onClick={() => put(figures.toSpliced(index, 1).toSpliced(index - 1, 0, path))}
              >
                Move up
              </button>
              <button
                type="button"
                class="word quiet"
                aria-label={`Remove: ${title}`}
                onClick={() => put(figures.toSpliced(index, 1))}
              >
                Remove
              </button>
            </li>
          );
        })}
      </ol>
      <div class="figure-add">
        <AddFrom
          id="figure-add"
          label="Add a figure"
          options={nameOptions(sheet, (info) => isFigure(info) && !figures.includes(info.path))}
          onAdd={(path) => put([...figures, path])}
        />
      </div>
    </details>
  );
}

const KINDS: ReadonlySet<NameInfo['kind']> = new Set(['result', 'fold', 'formula']);

/** Results of pieces of the model, sums of the parts and formula lines; what notes say has no name to show. */
const isFigure = ({ kind, detail }: NameInfo): boolean => KINDS.has(kind) && !(kind === 'formula' && detail);
