import { goAlong } from '../../controls/along';
import { WayTo } from '../../controls/fault-flag';
import { Mark } from '../../controls/mark';
import { useSheet } from '../../store/context';
import { FromBefore } from './from-before';
import { stopRows } from './stop-rows';

/** What is broken, before all else; a press leads to it. */
export function Stops() {
  const rows = stopRows(useSheet());
  if (rows.length === 0) return null;
  return (
    <section class="stops" aria-label="Stops" onKeyDown={goAlong}>
      <ul>
        {rows.map(({ place, title, words, behind }, k) => (
          <li key={`${place.cell} ${place.path}`} class={behind ? 'behind' : undefined} data-stop={place.path}>
            <Mark holds={false} />
            <WayTo place={place} along={k === 0 ? 'enters' : 'word'}>
              {title}
            </WayTo>
            <span class="check-words">
              {words}
              {behind && <FromBefore />}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
