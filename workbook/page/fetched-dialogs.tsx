import type { ComponentType } from 'preact';
import { useFetched } from '../drawing/index';
import { useSheet } from '../store/context';
import { fetched, NOT_FETCHED } from '../store/fetched';
import { askingNewsletter, figureAsked } from '../store/figures';
import { askingToListen } from '../store/listening';
import { askingFullSize } from '../store/printing';
import { askingToShare } from '../store/sharing';

/** A dialog whose part of the program is fetched when it is asked for first; where it can't be, that is said and nothing is asked for any more. */
function fetchedDialog<P extends { onClose(): void }>(
  load: () => Promise<ComponentType<P>>,
  close: () => void,
): ComponentType<Omit<P, 'onClose'>> {
  let here: ComponentType<P> | undefined;
  return function Fetched(props) {
    const sheet = useSheet();
    const Dialog = useFetched(
      () => here,
      async () => {
        try {
          here = await fetched(load);
        } catch {
          sheet.tell({ title: 'Not fetched.', sentences: [NOT_FETCHED] });
          close();
        }
      },
    );
    return Dialog ? <Dialog {...(props as P)} onClose={close} /> : null;
  };
}

/** The form of a figure to be saved. */
export const SavingFigure = fetchedDialog(
  async () => (await import('../figure/index')).FigureDialog,
  () => {
    figureAsked.value = undefined;
  },
);

/** The form of a newsletter page. */
export const Newsletter = fetchedDialog(
  async () => (await import('../figure/index')).NewsletterDialog,
  () => {
    askingNewsletter.value = false;
  },
);

/** Templates at full size. */
export const FullSize = fetchedDialog(
  async () => (await import('../full-size/index')).FullSizeDialog,
  () => {
    askingFullSize.value = false;
  },
);

/** What listens to a flight. */
export const Listening = fetchedDialog(
  async () => (await import('../listening/index')).ListeningDialog,
  () => {
    askingToListen.value = undefined;
  },
);

/** What hands a design on. */
export const Sharing = fetchedDialog(
  async () => (await import('../sharing/index')).SharingDialog,
  () => {
    askingToShare.value = undefined;
  },
);
