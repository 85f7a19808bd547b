/** So many faults are told at once: whoever mends these sees the next. */
const MOST_TOLD = 20;

/** What keeps a pasted text from being taken. */
export function PasteFaults({ told }: { told: readonly string[] }) {
  if (told.length === 0) return null;
  return (
    <div class="paste-faults" role="alert">
      <p>Nothing is taken until this is mended, in the text above or in the columns:</p>
      <ul>
        {told.slice(0, MOST_TOLD).map((fault) => (
          <li key={fault} class="fault-words">
            {fault}
          </li>
        ))}
      </ul>
      {told.length > MOST_TOLD && <p class="aside">{told.length - MOST_TOLD} more.</p>}
    </div>
  );
}
