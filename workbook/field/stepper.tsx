/** A number by thumb: large steps down and up. */
export function Stepper(props: { title: string; shown: string; onStep(way: 1 | -1): void }) {
  const { title, shown, onStep } = props;
  return (
    <div class="field-step">
      <span>{title}</span>
      <button type="button" aria-label={`${title}, less`} onClick={() => onStep(-1)}>
        −
      </button>
      <output aria-label={title}>{shown}</output>
      <button type="button" aria-label={`${title}, more`} onClick={() => onStep(1)}>
        +
      </button>
    </div>
  );
}
