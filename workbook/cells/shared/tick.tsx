import type { ComponentChildren } from 'preact';

/** One of several that may be taken together. */
export function Tick(props: { on: boolean; onChange(on: boolean): void; children: ComponentChildren }) {
  return (
    <label class="tick">
      <input
        type="checkbox"
        checked={props.on}
        onChange={({ currentTarget }) => props.onChange(currentTarget.checked)}
      />
      {props.children}
    </label>
  );
}
