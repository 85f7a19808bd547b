/**
 * Keeps the page on this machine, so that it opens where there's no connection.
 * A newer page waits until the one that is open has closed, since the open one may still need files of its own. Only when a
 * page starts, and nothing has been done in it yet, is a waiting one taken and the page opened anew.
 */
async function keepOffline(): Promise<void> {
  const kept = await navigator.serviceWorker.register('./offline.js');
  if (!kept.waiting || !navigator.serviceWorker.controller) return;
  navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
  kept.waiting.postMessage({ type: 'SKIP_WAITING' });
}

if ('serviceWorker' in navigator) {
  keepOffline().catch((reason: unknown) => console.warn('This page is not kept for use without a connection.', reason));
}
