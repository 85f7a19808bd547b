/** A quantity's symbol: italic, with what follows the underscore as its index. */
export function QuantitySymbol({ of }: { of: string }) {
  const [letter, index] = of.split('_', 2);
  return (
    <span class="symbol" aria-hidden="true">
      <i>{letter}</i>
      {index && <sub>{index}</sub>}
    </span>
  );
}
