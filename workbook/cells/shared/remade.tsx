import { remadeSentences } from '../../../engine/index';
import { useSheet } from '../../store/context';

/** Where a trade changes what weighed parts are made of: they are shown as they would be re-made, and that is said. */
export function Remade({ of }: { of: readonly string[] }) {
  return (
    <>
      {remadeSentences(useSheet().document.value, of).map((sentence) => (
        <p class="aside remade" key={sentence}>
          {sentence}
        </p>
      ))}
    </>
  );
}
