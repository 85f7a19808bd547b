import type { AnyBlock } from '../../blocks/block';
import type { BlockCell, Document } from '../../sheet/document';
import { cellsOf } from '../../sheet/sheets';
import { isMotor } from '../design/motor';
import { standIn } from './roles';

/** What pulls the model, as its builder calls it. */
export function driveOf(document: Document, blocks: readonly AnyBlock[]): 'engine' | 'motor' {
  const engine = standIn(document, 'engine', blocks) as BlockCell | undefined;
  return engine && isMotor(engine) ? 'motor' : 'engine';
}

/** An electric model has no row of fuel in its weights. */
export const carriesFuel = (document: Document): boolean =>
  cellsOf(document).some((cell) => cell.kind === 'parts' && cell.rows.some((row) => row.fuel));
