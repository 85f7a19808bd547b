import type { NameInfo } from '../../../engine/index';
import { useSheet } from '../../store/context';

/** Which results are key figures and in which order; the first three stand on the strip of a phone. */
export function FigureChoice() {
  const sheet = useSheet();
  const figures = sheet.part('figures');
  const put = (next: readonly string[]): void => sheet.changeHead({ figures: next }, 'key figures');
  return (
    <details class="figure-choice">
      <summary>Choose the key figures</summary>
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
      <label class="figure-add">
        <span>Add a figure</span>
        <select
          value=""
          onChange={(event) => {
            const path = event.currentTarget.value;
            event.currentTarget.value = '';
            if (path !== '') put([...figures, path]);
          }}
        >
          <option value="">–</option>
          {candidates(sheet.names.value, figures).map((info) => (
            <option key={info.path} value={info.path}>
              {info.title} ({info.path})
            </option>
          ))}
        </select>
      </label>
    </details>
  );
}

/** Results of the model, sums of the parts and formula lines that are no key figures yet; what notes say has no name to show. */
function candidates(names: ReadonlyMap<string, NameInfo>, figures: readonly string[]): NameInfo[] {
  const kinds: ReadonlySet<NameInfo['kind']> = new Set(['result', 'fold', 'formula']);
  return [...names.values()].filter(
    (info) => kinds.has(info.kind) && !(info.kind === 'formula' && info.detail) && !figures.includes(info.path),
  );
}
