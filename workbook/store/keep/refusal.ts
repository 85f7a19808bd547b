/** Names that the standard gives to the errors of a store, and what they mean for a person. */
const SENTENCES: Readonly<Record<string, string>> = {
  QuotaExceededError:
    'The store of this browser is full: the last change is not kept. Save the design to a file before you leave; removing versions, and deleting designs for good, makes room.',
  VersionError:
    'A newer Tetherwright is open in another tab, so this one keeps nothing any more. Save the design to a file, then load this page again.',
  BlockedError:
    'An older Tetherwright is open in another tab, so this one keeps nothing. Close the other tab, then load this page again.',
};

const NOTHING_KEPT = 'This browser keeps nothing between visits here. Save the design to a file before you leave.';

/** What a store that failed means, and what to do. */
export function refusalOf(error: unknown): string {
  const name = error instanceof Error || error instanceof DOMException ? error.name : '';
  return SENTENCES[name] ?? NOTHING_KEPT;
}
