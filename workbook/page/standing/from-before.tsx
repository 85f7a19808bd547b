/** Said after what waits for the hand to rest and is shown as it was; to the eye it is paler. */
export const FromBefore = () => <span class="unseen">, from before this move</span>;
