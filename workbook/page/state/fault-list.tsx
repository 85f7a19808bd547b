import { useEffect, useRef } from 'preact/hooks';
import type { Fault } from '../../../engine/index';
import { FaultWords, WayTo } from '../../controls/fault-flag';
import { useSheet } from '../../store/context';
import { checkRow, type StopRow, stopRows } from '../standing/stop-rows';

/** Everything that is wrong or waits, in the order of the sheets, each with a way to it. */
export function FaultList({ onClose }: { onClose: () => void }) {
  const sheet = useSheet();
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  const faults = sheet.snapshot.value?.faults ?? [];
  const stops = stopRows(sheet);
  const unlimited = sheet.unlimited.value.map((check) => checkRow(check, sheet));
  const leave = (): void => dialog.current?.close();
  return (
    <dialog ref={dialog} class="open-dialog fault-list" aria-labelledby="fault-list-title" onClose={onClose}>
      <div class="dialog-head">
        <h2 id="fault-list-title">Stops, faults and what waits</h2>
        <button type="button" class="word" onClick={leave}>
          Close
        </button>
      </div>
      {faults.length + stops.length + unlimited.length === 0 && (
        <p>Nothing any more: every number of the design has its answer.</p>
      )}
      <Listing title="Stops" rows={stops} onLeave={leave} />
      <Wrong faults={faults.filter((fault) => fault.state === 'fault')} onLeave={leave} />
      <Waiting faults={faults.filter((fault) => fault.state === 'waits')} onLeave={leave} />
      <Listing title="Checks without a limit" rows={unlimited} onLeave={leave} />
    </dialog>
  );
}

/** Checks that are broken or have no limit and results that are too low, each with how it stands. */
function Listing({ title, rows, onLeave }: Pick<Listed, 'onLeave'> & { title: string; rows: readonly StopRow[] }) {
  if (rows.length === 0) return null;
  return (
    <section>
      <h3>{title}</h3>
      <ul>
        {rows.map(({ place, title: of, words }) => (
          <li key={place.path} data-listed={place.path}>
            <WayTo place={place} onLeave={onLeave}>
              {of}
            </WayTo>
            <p>{words}</p>
          </li>
        ))}
      </ul>
    </section>
  );
}

interface Listed {
  readonly faults: readonly Fault[];
  readonly onLeave: () => void;
}

function Wrong({ faults, onLeave }: Listed) {
  const sheet = useSheet();
  if (faults.length === 0) return null;
  return (
    <section>
      <h3>Faults</h3>
      <ul>
        {faults.map((fault) => (
          <li key={`${fault.path} ${fault.message}`} data-listed={fault.path}>
            <WayTo place={fault} onLeave={onLeave}>
              {sheet.placeTitle(fault)}
            </WayTo>
            <p>
              <FaultWords fault={fault} onLeave={onLeave} />
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** One cell a row: everything in it mostly waits for the same. */
function Waiting({ faults, onLeave }: Listed) {
  const sheet = useSheet();
  if (faults.length === 0) return null;
  const cells = [...new Set(faults.map((fault) => fault.cell))];
  return (
    <section>
      <h3>Waiting</h3>
      <ul>
        {cells.map((cell) => {
          const here = faults.filter((fault) => fault.cell === cell);
          const causes = new Map(here.map(({ waitsFor = '', waitsTitle = waitsFor }) => [waitsFor, waitsTitle]));
          return (
            <li key={cell} data-listed={cell}>
              <WayTo place={here[0]!} onLeave={onLeave}>
                {sheet.placeTitle({ cell, path: '' })}
              </WayTo>{' '}
              waits for{' '}
              {[...causes].map(([path, title], k) => (
                <>
                  {k > 0 && ', '}
                  <WayTo place={{ cell: sheet.cellHolding(path) ?? '', path }} onLeave={onLeave}>
                    {title}
                  </WayTo>
                </>
              ))}
              .
            </li>
          );
        })}
      </ul>
    </section>
  );
}
