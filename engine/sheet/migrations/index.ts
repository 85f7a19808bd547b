import { materialsToRows } from './from-1';
import { cellsToSheets } from './from-2';
import { logsWithLines } from './from-3';
import type { Plain } from './plain';
import { modelSizeToRoughness } from './roughness';

/** Brings a file of one version to the next. A pure function of plain data: it must not lean on today's types. */
export interface Migration {
  /** The version it takes; it gives the next. */
  readonly from: number;
  migrate(file: Plain): Plain;
}

/** In order, without gaps, from version 1. Each has a test on a stored file of its version. */
export const migrations: readonly Migration[] = [
  { from: 1, migrate: materialsToRows },
  { from: 2, migrate: (file) => cellsToSheets(modelSizeToRoughness(file)) },
  { from: 3, migrate: logsWithLines },
];

/** Brings a file to `version`, step by step. Throws RangeError for a gap in the list: a mistake of the program. */
export function bringUp(file: Plain, from: number, version: number, list: readonly Migration[]): Plain {
  let now = file;
  for (let at = from; at < version; at++) {
    const step = list.find((migration) => migration.from === at);
    if (!step)
      throw new RangeError(`No migration takes a file of version ${at}; each version up to ${version} needs one`);
    now = { ...step.migrate(now), version: at + 1 };
  }
  return now;
}
