import type { ComponentChildren } from 'preact';
import { type Fault, unparted } from '../../engine/index';
import { useSheet } from '../store/context';
import { along } from './along';
import { goTo, type Place } from './go-to';

/** Id of the sentence, so that the field at fault can point to it. */
export const faultId = (path: string): string => `fault-${path.replace(/[^\w-]/g, '_')}`;

/** A small drafting flag on its staff with the sentence beside it. */
export function FaultFlag({ fault, named = true }: { fault: Fault; named?: boolean }) {
  return (
    <p class={`fault-flag ${fault.state}`} id={named ? faultId(fault.path) : undefined} data-fault={fault.path}>
      <svg viewBox="0 0 12 16" width="12" height="16" aria-hidden="true" focusable="false">
        <path class="staff" d="M2 1 V15.5" />
        <path class="cloth" d="M2 1.5 H11 L8.6 4.5 L11 7.5 H2 Z" />
      </svg>
      <span>
        <FaultWords fault={fault} />
      </span>
    </p>
  );
}

/** The sentence of a fault, with a way to what it waits for and a press that mends it where it's plain what was meant. */
export function FaultWords({ fault, onLeave }: { fault: Fault; onLeave?: () => void }) {
  return (
    <>
      <Sentence fault={fault} onLeave={onLeave} />
      <RepairButton fault={fault} />
    </>
  );
}

/** A link to a place of the sheet. `onLeave`: what has to be put away first. */
export function WayTo(props: {
  place: Place;
  onLeave?: () => void;
  /** It is one of the words of a group; `enters`: the one at which Tab enters it. */
  along?: 'enters' | 'word';
  children: ComponentChildren;
}) {
  const sheet = useSheet();
  return (
    <a
      {...(props.along ? along(props.along === 'enters') : {})}
      href={`#cell-${sheet.cellName(props.place.cell)}`}
      onClick={(event) => {
        event.preventDefault();
        props.onLeave?.();
        goTo(sheet, props.place);
      }}
    >
      {props.children}
    </a>
  );
}

function Sentence({ fault, onLeave }: { fault: Fault; onLeave?: () => void }) {
  const sheet = useSheet();
  const { message, waitsFor, waitsTitle = '' } = fault;
  const at = waitsTitle === '' ? -1 : message.lastIndexOf(waitsTitle);
  const cause = waitsFor === undefined ? undefined : sheet.cellHolding(waitsFor);
  if (waitsFor === undefined || at < 0 || cause === undefined) return message;
  return (
    <>
      {message.slice(0, at)}
      <WayTo place={{ cell: cause, path: waitsFor }} onLeave={onLeave}>
        {waitsTitle}
      </WayTo>
      {message.slice(at + waitsTitle.length)}
    </>
  );
}

function RepairButton({ fault }: { fault: Fault }) {
  const sheet = useSheet();
  if (!fault.repair) return null;
  return (
    <>
      {' '}
      <button type="button" class="word mend" onClick={() => sheet.mend(fault)}>
        Write {unparted(fault.repair.text)}
      </button>
    </>
  );
}
