import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';

/**
 * The rules of axe for a page, all looked at in the page itself: what holds isn't carried out of it element by element, which takes several
 * times as long as looking. Frames aren't looked into that way, so there may be none.
 */
export function axeOn(page: Page): AxeBuilder {
  if (page.frames().length > 1) throw new Error('There is a frame in the page, and no rule would be looked at in it.');
  return new AxeBuilder({ page }).setLegacyMode().options({ resultTypes: ['violations'] });
}
