import { verdict } from '../../cells/index';
import { WayTo } from '../../controls/fault-flag';
import { Mark } from '../../controls/mark';
import { useSheet } from '../../store/context';

/** What is broken, before all else; a press leads to it. */
export function Stops() {
  const sheet = useSheet();
  const broken = sheet.stops.value;
  if (broken.length === 0) return null;
  return (
    <section class="stops" aria-label="Stops">
      <ul>
        {broken.map((check) => (
          <li key={check.id} data-stop={check.name}>
            <Mark holds={false} />
            <WayTo place={{ cell: check.id, path: check.name }}>{check.title}</WayTo>
            <span class="check-words">{verdict(check, sheet).words}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
