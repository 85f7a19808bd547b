import { useState } from 'preact/hooks';

interface TypedProps {
  readonly id: string;
  readonly text: string;
  readonly numeric?: boolean;
  /** Id of the sentence that says what is wrong with the text. */
  readonly wrong?: string | undefined;
  onDone(text: string): void;
}

/** A plain text in a form. What is being typed stays while the sheet is drawn anew around it; Enter or leaving makes it an edit. */
export function Typed({ id, text, numeric, wrong, onDone }: TypedProps) {
  const [draft, setDraft] = useState<string | undefined>(undefined);
  return (
    <input
      id={id}
      class="text-entry"
      type="text"
      inputMode={numeric ? 'numeric' : undefined}
      autocomplete="off"
      aria-invalid={wrong === undefined ? undefined : true}
      aria-describedby={wrong}
      value={draft ?? text}
      onInput={({ currentTarget }) => setDraft(currentTarget.value)}
      onChange={({ currentTarget }) => {
        const typed = currentTarget.value.trim();
        setDraft(undefined);
        if (typed !== text) onDone(typed);
      }}
    />
  );
}
