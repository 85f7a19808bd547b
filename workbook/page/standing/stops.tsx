import { underWords, verdict } from '../../cells/index';
import { goAlong } from '../../controls/along';
import { WayTo } from '../../controls/fault-flag';
import { Mark } from '../../controls/mark';
import { useSheet } from '../../store/context';

/** What is broken, before all else; a press leads to it. */
export function Stops() {
  const sheet = useSheet();
  const broken = sheet.stops.value;
  const low = sheet.breaches.value;
  if (broken.length + low.length === 0) return null;
  return (
    <section class="stops" aria-label="Stops" onKeyDown={goAlong}>
      <ul>
        {broken.map((check, k) => (
          <li key={check.id} data-stop={check.name}>
            <Mark holds={false} />
            <WayTo place={{ cell: check.id, path: check.name }} along={k === 0 ? 'enters' : 'word'}>
              {check.title}
            </WayTo>
            <span class="check-words">{verdict(check, sheet).words}</span>
          </li>
        ))}
        {low.map((info, k) => (
          <li key={info.path} data-stop={info.path}>
            <Mark holds={false} />
            <WayTo place={{ cell: info.cell, path: info.path }} along={k + broken.length === 0 ? 'enters' : 'word'}>
              {info.title}
            </WayTo>
            <span class="check-words">{underWords(info, sheet)}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
