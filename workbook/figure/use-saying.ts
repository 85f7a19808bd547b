import { type Signal, useSignal } from '@preact/signals';

/** What a dialog says of its work: that it goes on, that it is done, or why it can't be. */
export function useSaying(): [said: Signal<string>, doing: (what: () => Promise<void>, done: string) => Promise<void>] {
  const said = useSignal('');
  return [
    said,
    async (what, done) => {
      said.value = 'Working.';
      try {
        await what();
        said.value = done;
      } catch (error) {
        said.value = error instanceof Error ? error.message : String(error);
      }
    },
  ];
}
