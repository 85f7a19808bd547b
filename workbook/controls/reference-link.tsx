import type { ComponentChildren } from 'preact';

export interface ReferenceLinkProps {
  /** Place in the reference; missing: its beginning. */
  to?: string;
  class?: string;
  children: ComponentChildren;
}

/** Opens the reference beside the sheet, always in the same second page. */
export function ReferenceLink({ to, class: look, children }: ReferenceLinkProps) {
  return (
    <a class={look} href={`./reference.html${to === undefined ? '' : `#${to}`}`} target="tetherwright-reference">
      {children}
      {to !== undefined && <span class="unseen"> in the reference</span>}
    </a>
  );
}
