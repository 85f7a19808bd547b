import { formatNumber } from '../../../engine/index';

/** "62 ± 2": in whole percent, errors too. */
export const shareFigure = (share: number, error: number): string =>
  `${formatNumber(Math.round(share))} ± ${formatNumber(Math.max(1, Math.round(error)))}`;
