import { formatNumber } from '../../../engine/index';
import { type Family, linePoints, type Panel, type Spot } from '../frame/family';
import { type Zone, zonesOf } from '../frame/limits';
import type { SweepChartProps } from '../frame/props';
import { type Marked, variantText } from '../frame/spots';
import { splitShared } from './shared-words';

/** One line of a panel, in the numbers of its axes; y is NaN where it breaks off. */
export interface PlotLine {
  readonly key: string;
  /** What stands at its end; '' where it is the only one. */
  readonly label: string;
  readonly points: readonly Spot[];
  /** It goes by whole numbers: level between them. */
  readonly steps?: boolean;
}
/** A design that is marked on a panel. */
export interface PlotMark {
  readonly kind: Marked['kind'];
  readonly order?: number;
  /** What it is a value of, where a panel has several. */
  readonly of: string;
  readonly at: Spot;
  readonly text: string;
}
/** The line of another design. */
interface PlotGhost {
  /** Place of a variant among those on the chart; missing: the baseline. */
  readonly order?: number;
  readonly points: readonly Spot[];
}
export interface PlotPanel {
  readonly path: string;
  /** Paths of the quantities that stand in it. */
  readonly shows: readonly string[];
  /** With unit. */
  readonly title: string;
  readonly lines: readonly PlotLine[];
  /** The baseline's own lines, then those of the variants. */
  readonly ghosts: readonly PlotGhost[];
  readonly marks: readonly PlotMark[];
  readonly zones: readonly Zone[];
}
/** Lines over one axis, one panel above the other: what a chart of lines draws, wherever it comes from. */
export interface Plot {
  /** Title with unit. */
  readonly acrossTitle: string;
  /** Numbers along the axis: it runs from the least to the greatest. */
  readonly across: readonly number[];
  /** Names of the places along the axis, where it is a choice. */
  readonly options?: { readonly names: readonly string[]; readonly indices: ArrayLike<number> } | undefined;
  readonly panels: readonly PlotPanel[];
}

/** What the chart of a sweep draws. */
export function plotOf(family: Family, props: SweepChartProps): Plot {
  const groups = props.cell.together ? byUnit(family.panels) : family.panels.map((panel) => [panel]);
  return {
    acrossTitle: family.across.title,
    across: Array.from(family.acrossValues, (v) => family.across.shown(v)),
    options: family.options && { names: family.options, indices: family.acrossValues },
    panels: groups.map((panels) => panelOf(panels, family, props)),
  };
}

interface Unit {
  readonly unit: string;
  readonly suffix: string;
}

/** Those that are read in one unit stand together, where the first of them stands. */
export function byUnit<P extends { readonly info: Unit }>(panels: readonly P[]): P[][] {
  const groups = new Map<string, P[]>();
  for (const panel of panels) {
    const unit = `${panel.info.unit} ${panel.info.suffix}`;
    const group = groups.get(unit);
    if (group) group.push(panel);
    else groups.set(unit, [panel]);
  }
  return [...groups.values()];
}

/** Title of a panel of several quantities, and what its lines are called. */
export function titlesOf(
  panels: readonly { readonly title: string; readonly info: { readonly title: string } & Unit }[],
): {
  readonly title: string;
  readonly labels: readonly string[];
} {
  const [first, ...others] = panels;
  if (others.length === 0) return { title: first!.title, labels: [''] };
  const { shared, rest } = splitShared(panels.map(({ info }) => info.title));
  const unit = first!.info.suffix || first!.info.unit;
  return { title: unit === '' ? shared : `${shared}, ${unit}`, labels: rest };
}

function panelOf(panels: readonly Panel[], family: Family, props: SweepChartProps): PlotPanel {
  const { title, labels } = titlesOf(panels);
  return {
    path: panels.map(({ path }) => path).join(' '),
    shows: panels.map(({ path }) => path),
    title,
    lines: panels.flatMap((panel, k) =>
      family.lines.map((line) => {
        const points = linePoints(family, panel, line, props.progress);
        return {
          key: panels.length === 1 ? line.key : `${panel.path} ${line.key}`,
          label: [labels[k]!, line.label].filter((text) => text !== '').join(', '),
          points,
          steps: bySteps(panel.info, points),
        };
      }),
    ),
    ghosts: panels.flatMap(({ ghost, others }): PlotGhost[] =>
      [{ points: ghost }, ...others.map((other, order) => ({ order, points: other.ghost }))].filter(
        ({ points }) => points.length > 0,
      ),
    ),
    marks: panels.flatMap((panel): PlotMark[] => [
      ...(['now', 'baseline'] as const).flatMap((kind) => {
        const at = panel[kind];
        return at ? [{ kind, of: panel.path, at, text: `${kind} ${formatNumber(at.y)}` }] : [];
      }),
      ...panel.others.flatMap(({ name, spot: at }, order) =>
        at ? [{ kind: 'variant' as const, order, of: panel.path, at, text: variantText(name, at.y) }] : [],
      ),
    ]),
    zones: onceEach(panels.flatMap((panel) => zonesOf(panel, props.checks, props.names, props.values))),
  };
}

/** Counts of stops and the like: numbers without a unit that are whole wherever there is an answer. */
function bySteps({ unit, suffix }: Unit, points: readonly Spot[]): boolean {
  const answered = points.map(({ y }) => y).filter(Number.isFinite);
  return unit === '' && suffix === '' && answered.length > 2 && answered.every(Number.isInteger);
}

/** One limit for several quantities is drawn once. */
function onceEach(zones: readonly Zone[]): Zone[] {
  return zones.filter(
    ({ side, limit, reason }, k) =>
      zones.findIndex((each) => each.side === side && each.limit === limit && each.reason === reason) === k,
  );
}
