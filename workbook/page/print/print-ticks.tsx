interface TicksProps<K extends string> {
  readonly legend: string;
  readonly options: readonly { readonly key: K; readonly words: string }[];
  /** Those that are left out. */
  readonly out: ReadonlySet<K>;
  onChange(out: ReadonlySet<K>): void;
}

/** What goes on paper of several things. */
export function PrintTicks<K extends string>({ legend, options, out, onChange }: TicksProps<K>) {
  return (
    <fieldset class="print-choice">
      <legend>{legend}</legend>
      {options.map(({ key, words }) => (
        <label key={key}>
          <input
            type="checkbox"
            checked={!out.has(key)}
            onChange={({ currentTarget }) => {
              const next = new Set(out);
              if (currentTarget.checked) next.delete(key);
              else next.add(key);
              onChange(next);
            }}
          />
          {words}
        </label>
      ))}
    </fieldset>
  );
}
