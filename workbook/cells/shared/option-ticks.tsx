import { useSheet } from '../../store/context';
import { Tick } from './tick';

interface TicksProps {
  /** The choice, its options, and which of them are taken; all where none is named. */
  readonly of: string;
  readonly all: readonly string[];
  readonly taken: readonly string[] | undefined;
  /** Undefined: all of them. */
  onTake(options: readonly string[] | undefined): void;
}

/** Which options of a choice are taken; the last one stays, since a choice among nothing is none. */
export function OptionTicks({ of, all, taken, onTake }: TicksProps) {
  const sheet = useSheet();
  const isTaken = (option: string): boolean => taken?.includes(option) ?? true;
  return (
    <div class="ticks">
      {all.map((option) => (
        <Tick
          key={option}
          on={isTaken(option)}
          onChange={(on) => {
            const next = all.filter((each) => (each === option ? on : isTaken(each)));
            if (next.length > 0) onTake(next.length === all.length ? undefined : next);
          }}
        >
          {sheet.optionTitle(of, option) ?? option.replaceAll('_', ' ')}
        </Tick>
      ))}
    </div>
  );
}
