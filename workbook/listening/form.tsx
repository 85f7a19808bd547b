import type { Listened } from './from-design';

const DRIVES = [
  ['two_stroke', 'two-stroke engine'],
  ['four_stroke', 'four-stroke engine'],
  ['motor', 'electric motor'],
] as const satisfies readonly (readonly [Listened['drive'], string])[];

/** What is listened to. */
export function ListenedForm({ listened, onChange }: { listened: Listened; onChange(next: Listened): void }) {
  return (
    <fieldset class="listened">
      <legend>What flies</legend>
      <p>
        {DRIVES.map(([drive, words]) => (
          <label key={drive}>
            <input
              type="radio"
              name="listened-drive"
              checked={listened.drive === drive}
              onChange={() => onChange({ ...listened, drive })}
            />
            {words}
          </label>
        ))}
      </p>
      {listened.drive === 'motor' && (
        <label>
          Blades of the propeller
          <input
            class="text-entry"
            inputmode="numeric"
            value={String(listened.blades)}
            onInput={({ currentTarget }) => onChange({ ...listened, blades: Number(currentTarget.value) })}
          />
        </label>
      )}
      <label>
        rpm expected, roughly
        <input
          class="text-entry"
          inputmode="numeric"
          placeholder="10000"
          value={listened.rpm}
          onInput={({ currentTarget }) => onChange({ ...listened, rpm: currentTarget.value })}
        />
      </label>
      <p class="aside">It is looked for within 30&nbsp;% of that; the design’s own number stands there at first.</p>
    </fieldset>
  );
}
