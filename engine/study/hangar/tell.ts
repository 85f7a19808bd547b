import type { Document } from '../../sheet/document';
import { openText } from '../../sheet/file';
import { type Live, openQuick } from '../../sheet/live';
import type { Library } from '../../sheet/specs';
import { drawingOfLive } from '../design/drawing';
import { settleFor } from '../design/shown';
import { standIn } from '../place/roles';
import type { DesignTold, KeyFigure } from './told';

/** By these designs are told apart and compared, in this order. */
const FIGURES = [
  'parts.mass',
  'flight.pull',
  'flight.pull_per_weight',
  'flight.lap_time',
  'wing.span',
  'wing.area',
  'balance.cg_x',
  'balance.cg_share',
  'balance.static_margin',
  'engine.station',
  'engine.propeller_diameter',
  'lines.eyelet_length',
  'lines.diameter',
  'lines.count',
  'flight.nose_out',
  'flight.outboard_low',
  'flight.test_margin',
  'flight.breaking_margin',
] as const;

/** What a list of designs shows of one, in the units of the design. Only what these figures rest on is computed. */
export function tell(text: string, library: Library): DesignTold | undefined {
  const opened = openText(text);
  if (!opened.ok) return undefined;
  const live = openQuick(opened.document, library);
  const found = FIGURES.flatMap((of) => {
    const path = pathIn(opened.document, of, library);
    const info = path === undefined ? undefined : live.compiled.names.find((each) => each.path === path);
    return info ? [{ of, info }] : [];
  });
  settleFor(
    live,
    found.map(({ info }) => info.slot),
  );
  const figures = found.map(({ of, info }): KeyFigure => {
    const { title, unit, suffix, ways, slot } = info;
    return { of, title, unit, suffix, ...(ways ? { ways } : {}), value: live.state.m[slot]! };
  });
  return {
    kind: kindOf(live, library),
    figures,
    drawing: drawingOfLive(live, new Map(library.blocks.map((block) => [block.kind, block]))),
  };
}

/** A path with the piece that stands in for the role in its place. */
function pathIn(document: Document, of: string, { blocks }: Library): string | undefined {
  const [role, ...rest] = of.split('.') as [string, ...string[]];
  const name = standIn(document, role, blocks)?.name;
  return name === undefined ? undefined : [name, ...rest].join('.');
}

function kindOf({ compiled: { document } }: Live, { blocks }: Library): string {
  return document.class?.trim() || standIn(document, 'engine', blocks)?.title || '';
}
