import { expect, test } from 'vitest';
import { NEWER, watchForNewer } from '../../workbook/newer-edition';
import { newerWaits, watchNewer } from '../../workbook/store/newer-edition';

/** A registration in which an edition comes and goes through its states. */
function registration() {
  const worker = Object.assign(new EventTarget(), { state: 'installing' });
  const of = Object.assign(new EventTarget(), { installing: worker });
  return {
    of: of as unknown as ServiceWorkerRegistration,
    come: () => of.dispatchEvent(new Event('updatefound')),
    become(state: string) {
      worker.state = state;
      worker.dispatchEvent(new Event('statechange'));
    },
  };
}

test('a newer edition is told when it is there, and not before', () => {
  const { of, come, become } = registration();
  let told = 0;
  watchForNewer(
    of,
    () => true,
    () => told++,
  );
  come();
  expect(told).toBe(0);
  become('installed');
  expect(told).toBe(1);
  become('activated');
  expect(told).toBe(1);
});

test('the first edition that a browser keeps is no newer one', () => {
  const { of, come, become } = registration();
  let told = 0;
  watchForNewer(
    of,
    () => false,
    () => told++,
  );
  come();
  become('installed');
  expect(told).toBe(0);
});

test('the page hears of it', () => {
  const page = new EventTarget();
  watchNewer(page as unknown as Window);
  expect(newerWaits.value).toBe(false);
  page.dispatchEvent(new Event(NEWER));
  expect(newerWaits.value).toBe(true);
  newerWaits.value = false;
});
