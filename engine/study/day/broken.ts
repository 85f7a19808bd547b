import type { CheckCell } from '../../sheet/document';
import type { Live } from '../../sheet/live';
import { cellsOf } from '../../sheet/sheets';
import { tellBreaches, tellCheck } from '../command/checks';
import { namesByPath } from '../command/values';

/** Checks that are broken in a design, and results under what they may not come under: each a sentence without its “stop”. */
export function brokenIn(live: Live): readonly string[] {
  const names = namesByPath(live);
  const checks = cellsOf(live.compiled.document).filter((cell): cell is CheckCell => cell.kind === 'check');
  const broken = checks
    .map((check) => ({ of: check.of, ...tellCheck(check, live, names) }))
    .filter(({ stop }) => stop === true);
  return [...broken, ...tellBreaches(live, names, broken)].map(({ line }) =>
    line.replace(/^✕ /, '').replace(': stop, ', ': ').trim(),
  );
}
