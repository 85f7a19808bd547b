import { encode } from 'uqr';
import { BLACK, WHITE } from '../theme/tokens';

/** Empty modules around it that a reader needs (ISO/IEC 18004). */
const QUIET = 4;

/** A text as a QR picture, black on white whatever the paper. */
export function QrPicture({ text, says }: { text: string; says: string }) {
  const { data, size } = encode(text, { ecc: 'L', border: 0, boostEcc: true });
  const whole = size + 2 * QUIET;
  const dark = data.flatMap((row, y) => row.map((on, x) => (on ? `M${x + QUIET} ${y + QUIET}h1v1h-1z` : ''))).join('');
  return (
    <svg role="img" aria-label={says} viewBox={`0 0 ${whole} ${whole}`} class="qr-picture" shape-rendering="crispEdges">
      <rect width={whole} height={whole} fill={WHITE} />
      <path d={dark} fill={BLACK} />
    </svg>
  );
}
