/** Tells the open page that a newer edition has come. */
export const NEWER = 'newer-edition';

/** What of a registration is listened to. */
type Registration = Pick<ServiceWorkerRegistration, 'addEventListener' | 'installing'>;

/**
 * Calls `tell` once a newer edition is there and waits: one that is installed while another serves the page. The first edition that a
 * browser ever keeps is no newer one.
 */
export function watchForNewer(registration: Registration, served: () => boolean, tell: () => void): void {
  registration.addEventListener('updatefound', () => {
    const worker = registration.installing;
    worker?.addEventListener('statechange', () => {
      if (worker.state === 'installed' && served()) tell();
    });
  });
}
