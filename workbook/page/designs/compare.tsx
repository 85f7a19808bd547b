import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { DesignDifferences } from '../../../engine/index';
import type { Designs } from '../../store/designs';
import type { Design } from '../../store/keep/index';
import { comparedRows } from './compare-rows';

interface Props {
  readonly first: Design;
  readonly second: Design;
  readonly designs: Designs;
}

/** Two designs side by side: key figures with their differences, then what is typed otherwise. */
export function Compare({ first, second, designs }: Props) {
  const differences = useSignal<DesignDifferences | undefined>(undefined);
  useEffect(() => {
    let here = true;
    differences.value = undefined;
    void designs.hangar.between(first, second).then((answer) => {
      if (here) differences.value = answer;
    });
    return () => {
      here = false;
    };
  }, [first.text, second.text]);
  const told = designs.hangar.told.value;
  const [a, b] = [told.get(first.text), told.get(second.text)];
  const heads = [first, second].map(({ title }) => title || 'Untitled design');
  if (!a || !b) return <p class="aside">These two are being computed.</p>;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than its place is scrolled by keyboard.
    <section class="compared" aria-label="Comparison" tabIndex={0}>
      <table>
        <caption>Key figures, in the units of “{heads[0]}”</caption>
        <thead>
          <tr>
            <th scope="col">Figure</th>
            <th scope="col">{heads[0]}</th>
            <th scope="col">{heads[1]}</th>
            <th scope="col">Difference</th>
          </tr>
        </thead>
        <tbody>
          {comparedRows(a, b).map((row) => (
            <tr key={row.of}>
              <th scope="row">{row.title}</th>
              <td>{row.first}</td>
              <td>{row.second}</td>
              <td>{row.difference}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {differences.value && <TypedOtherwise of={differences.value} heads={heads} />}
    </section>
  );
}

function TypedOtherwise({ of, heads }: { readonly of: DesignDifferences; readonly heads: readonly string[] }) {
  const onlyIn = (head: string | undefined, titles: readonly string[]) =>
    titles.length > 0 && (
      <p>
        Only in “{head}”: {titles.join('; ')}.
      </p>
    );
  return (
    <>
      {of.texts.length === 0 ? (
        <p>What both have is typed alike.</p>
      ) : (
        <table class="typed">
          <caption>Typed otherwise</caption>
          <thead>
            <tr>
              <th scope="col">Where</th>
              <th scope="col">{heads[0]}</th>
              <th scope="col">{heads[1]}</th>
            </tr>
          </thead>
          <tbody>
            {of.texts.map(({ title, here, there }) => (
              <tr key={title + here + there}>
                <th scope="row">{title}</th>
                <td>{here || 'blank'}</td>
                <td>{there || 'blank'}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {onlyIn(heads[0], of.here)}
      {onlyIn(heads[1], of.there)}
    </>
  );
}
