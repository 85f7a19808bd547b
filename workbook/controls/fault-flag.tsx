import type { Fault } from '../../engine/index';

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
      <span>{fault.message}</span>
    </p>
  );
}
