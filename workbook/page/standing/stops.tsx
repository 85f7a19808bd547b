import { underWords, verdict } from '../../cells/index';
import { goAlong } from '../../controls/along';
import { WayTo } from '../../controls/fault-flag';
import { Mark } from '../../controls/mark';
import { useSheet } from '../../store/context';
import { FromBefore } from './from-before';

/** What is broken, before all else; a press leads to it. */
export function Stops() {
  const sheet = useSheet();
  const broken = sheet.stops.value.map((check) => {
    const { reader, behind } = sheet.besideOf(check);
    const place = { cell: check.id, path: check.name };
    return { place, title: check.title, words: verdict(check, reader).words, behind };
  });
  const low = sheet.breaches.value.map((info) => {
    const behind = sheet.behind(info.path);
    return { place: info, title: info.title, words: underWords(info, behind ? sheet.rested : sheet), behind };
  });
  const rows = [...broken, ...low];
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
