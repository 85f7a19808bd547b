import type { ComponentChildren } from 'preact';
import { along } from './along';

export interface ReferenceLinkProps {
  /** Place in the reference; missing: its beginning. */
  to?: string;
  class?: string;
  /** It is one of the words of a group. */
  along?: boolean;
  children: ComponentChildren;
}

/** The same second page for whatever leads to the reference. */
export const REFERENCE_PAGE = 'tetherwright-reference';
export const referenceAddress = (to?: string): string => `./reference.html${to === undefined ? '' : `#${to}`}`;

/** Opens the reference beside the sheet, always in the same second page. */
export function ReferenceLink({ to, class: look, along: within, children }: ReferenceLinkProps) {
  return (
    <a {...(within ? along() : {})} class={look} href={referenceAddress(to)} target={REFERENCE_PAGE}>
      {children}
      {to !== undefined && <span class="unseen"> in the reference</span>}
    </a>
  );
}
