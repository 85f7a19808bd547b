import { calledIn } from '../../sheet/called';
import type { Live } from '../../sheet/live';
import { withTitles } from '../../sheet/named';

/** A plan as it is, or the sentence that stands in its place with the titles of what it names. */
export const titled = <T>(found: T | string, { compiled }: Live): T | string =>
  typeof found === 'string' ? withTitles(found, calledIn(compiled)) : found;
