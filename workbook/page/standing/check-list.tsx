import { holdsOf, verdict } from '../../cells/index';
import { goAlong } from '../../controls/along';
import { WayTo } from '../../controls/fault-flag';
import { Mark } from '../../controls/mark';
import { useSheet } from '../../store/context';
import { FromBefore } from './from-before';

/** Every check that holds, waits or has no limit, on one line each; what is broken stands above the key figures. */
export function CheckList() {
  const sheet = useSheet();
  const all = sheet.checks.value;
  if (all.length === 0) {
    return (
      <p class="aside checks">
        No check yet. A check watches one number and says when to stop; “Add” at the top makes one.
      </p>
    );
  }
  const standing = all.map((check) => {
    const { reader, behind } = sheet.besideOf(check);
    return { check, behind, now: verdict(check, reader) };
  });
  const checks = standing.filter(({ now }) => now.kind !== 'broken');
  if (checks.length === 0) return null;
  return (
    <section class="checks" aria-labelledby="checks-title" onKeyDown={goAlong}>
      <h2 id="checks-title">Stop if one of these breaks</h2>
      <ul>
        {checks.map(({ check, behind, now }, k) => (
          <li key={check.id} class={behind ? `${now.kind} behind` : now.kind} data-check={check.name}>
            <Mark holds={holdsOf(now)} />
            <WayTo place={{ cell: check.id, path: check.name }} along={k === 0 ? 'enters' : 'word'}>
              {check.title}
            </WayTo>
            <span class="check-value">
              {now.now}
              {now.kind === 'unlimited' ? (
                <span class="aside">, no limit yet</span>
              ) : (
                <span class="unseen">{now.kind === 'holds' ? ', within its limits' : ', no answer yet'}</span>
              )}
              {behind && <FromBefore />}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
