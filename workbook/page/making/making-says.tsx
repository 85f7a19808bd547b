import type { MakingAnswer } from '../../../engine/index';

/** What making something does to the design, before it is done. */
export function MakingSays({ of }: { of: MakingAnswer | undefined }) {
  if (!of) return null;
  if (!of.ok) return <p class="form-problem">{of.message}</p>;
  return (
    <ul class="study-says">
      {of.says.map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
      <li>Undo takes it back.</li>
    </ul>
  );
}
