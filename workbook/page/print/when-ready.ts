/** How often it is looked whether something is still missing, ms. */
const LOOK_EVERY = 80;
/** So often in a row nothing was missing: what has just come may ask for more. */
const ENOUGH = 3;

/** Waits until no piece says that it is busy; false when it was left before. `tell`: how many still are. */
export async function whenReady(
  working: () => boolean,
  tell: (left: number) => void,
  leaving: AbortSignal,
): Promise<boolean> {
  for (let quiet = 0; quiet < ENOUGH; ) {
    await new Promise((resolve) => setTimeout(resolve, LOOK_EVERY));
    if (leaving.aborted) return false;
    const busy = document.querySelectorAll('#pieces [aria-busy="true"]').length;
    const left = busy === 0 && working() ? 1 : busy;
    quiet = left === 0 ? quiet + 1 : 0;
    if (left > 0) tell(left);
  }
  return true;
}
