import type { Found, PickOption } from './search';

interface ListBoxProps {
  readonly id: string;
  readonly found: Found;
  /** Place of the option that Enter takes. */
  readonly active: number;
  /** What is picked already. */
  readonly now: string | undefined;
  idOf(place: number): string;
  onTake(option: PickOption): void;
}

/** The options that fit, each group under its title. */
export function PickListBox({ id, found: { shown, more }, active, now, idOf, onTake }: ListBoxProps) {
  const groups = [...new Set(shown.map(({ group }) => group))];
  const line = (option: PickOption) => {
    const place = shown.indexOf(option);
    return (
      // biome-ignore lint/a11y/useKeyWithClickEvents: the keys are those of the field, which keeps the focus.
      <div
        key={option.value}
        id={idOf(place)}
        role="option"
        tabIndex={-1}
        aria-selected={place === active}
        class={option.value === now ? 'now' : ''}
        data-value={option.value}
        aria-description={option.detail}
        onClick={() => onTake(option)}
      >
        {option.title}
        {option.detail && (
          <span class="pick-detail" aria-hidden="true">
            {option.detail}
          </span>
        )}
      </div>
    );
  };
  return (
    <div class="pick-list">
      {/* A press on the list leaves the focus in the field. */}
      <div
        id={id}
        role="listbox"
        tabIndex={-1}
        aria-label="To pick from"
        onMouseDown={(event) => event.preventDefault()}
      >
        {groups.map((group, k) => {
          const lines = shown.filter((option) => option.group === group).map(line);
          if (group === undefined) return lines;
          return (
            // biome-ignore lint/a11y/useSemanticElements: a list of options knows groups by this role.
            <div key={group} role="group" aria-labelledby={`${id}-group${k}`}>
              <div class="pick-group" id={`${id}-group${k}`} role="presentation">
                {group}
              </div>
              {lines}
            </div>
          );
        })}
      </div>
      {shown.length === 0 && <p class="aside">Nothing fits. Type fewer letters.</p>}
      {more > 0 && <p class="aside">{more} more: type to narrow.</p>}
    </div>
  );
}
