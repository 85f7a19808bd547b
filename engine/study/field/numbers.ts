import type { Document } from '../../sheet/document';
import type { Live } from '../../sheet/live';
import { putText, textAt } from '../../sheet/paths';
import type { Library } from '../../sheet/specs';
import type { NameInfo } from '../../terms/index';
import { formatQuantity, writeQuantity } from '../../units/index';
import { standIn } from '../place/index';
import { typedSlot } from '../run/axis';

/** What a design says under the names of roles: `lap.least_pull` whatever its piece is called. */
export interface Figures {
  /** Path in the design; undefined where no piece has the role. */
  path(of: string): string | undefined;
  /** SI; NaN where there is no answer. */
  value(of: string): number;
  /** As the page shows it; '–' where there is no answer. */
  text(of: string): string;
  info(of: string): NameInfo | undefined;
}

export function figuresOf(live: Live, library: Library): Figures {
  const { compiled, state } = live;
  const names = new Map<string, NameInfo>();
  // Of two that share a path, a result stands for the field that it repeats.
  for (const info of compiled.names) if (!names.has(info.path) || info.kind === 'result') names.set(info.path, info);
  const path = (of: string): string | undefined => {
    const [role = '', name = ''] = of.split('.');
    const piece = standIn(compiled.document, role, library.blocks);
    return piece && `${piece.name}.${name}`;
  };
  const info = (of: string): NameInfo | undefined => names.get(path(of) ?? '');
  const value = (of: string): number => state.m[info(of)?.slot ?? -1] ?? Number.NaN;
  return {
    path,
    info,
    value,
    text(of) {
      const { unit = '', suffix = '', ways } = info(of) ?? {};
      const si = value(of);
      return Number.isNaN(si) ? '–' : formatQuantity(si, unit, { suffix, ...(ways ? { ways } : {}) });
    },
  };
}

/** A number that is typed at a path, or stands there by a name or an estimate, SI. */
export function typedValue({ compiled, state }: Live, path: string): number {
  const typed = state.m[typedSlot(path, compiled.program)] ?? Number.NaN;
  return Number.isNaN(typed) ? (state.m[compiled.program.slotOf.get(path) ?? -1] ?? Number.NaN) : typed;
}

/** The document with another number at a path; where a variable alone stands there, with another of the variable. */
export function withNumber({ compiled }: Live, document: Document, path: string, si: number): Document {
  const text = textAt(document, path)?.trim() ?? '';
  const variable = compiled.names.find((info) => info.kind === 'variable' && info.path === text);
  const at = variable?.path ?? path;
  const unit = compiled.names.find((info) => info.path === at && info.settable)?.unit ?? '';
  return putText(document, at, writeQuantity(si, unit)) ?? document;
}
