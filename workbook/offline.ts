import { NEWER, watchForNewer } from './newer-edition';

/**
 * Keeps the page on this machine, so that it opens where there's no connection.
 * A newer page waits until the one that is open has closed, since the open one may still need files of its own. Only when a
 * page starts, and nothing has been done in it yet, is a waiting one taken and the page opened anew.
 */
async function keepOffline(): Promise<void> {
  const { serviceWorker } = navigator;
  // Looked at before registering, which may end only when a newer page has come and somebody is at work in this one.
  const waiting = (await serviceWorker.getRegistration())?.waiting;
  if (waiting && serviceWorker.controller) {
    serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
    waiting.postMessage({ type: 'SKIP_WAITING' });
  } else {
    // A browser that was told to keep nothing may give none.
    const registration: ServiceWorkerRegistration | undefined = await serviceWorker.register('./offline.js');
    if (!registration) return;
    const served = (): boolean => serviceWorker.controller !== null;
    watchForNewer(registration, served, () => window.dispatchEvent(new Event(NEWER)));
    // A page that stays open for days looks again when somebody comes back to it.
    document.addEventListener('visibilitychange', () => {
      if (document.visibilityState === 'visible') registration.update().catch(() => {});
    });
  }
}

if ('serviceWorker' in navigator) {
  keepOffline().catch((reason: unknown) => console.warn('This page is not kept for use without a connection.', reason));
}
