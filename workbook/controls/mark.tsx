/** Tick or cross, always beside the word that says the same. */
export function Mark({ holds }: { holds: boolean | undefined }) {
  if (holds === undefined) {
    return (
      <svg class="mark" viewBox="0 0 14 14" width="14" height="14" aria-hidden="true" focusable="false">
        <path d="M3 7 H11" />
      </svg>
    );
  }
  return (
    <svg
      class={holds ? 'mark holds' : 'mark broken'}
      viewBox="0 0 14 14"
      width="14"
      height="14"
      aria-hidden="true"
      focusable="false"
    >
      <path d={holds ? 'M2.5 7.5 L5.8 11 L11.5 3' : 'M3 3 L11 11 M11 3 L3 11'} />
    </svg>
  );
}
