import type { ComponentChild } from 'preact';
import { AlongChart } from '../../../workbook/charts/along/view';
import { BarChart } from '../../../workbook/charts/bars/view';
import { CarpetChart } from '../../../workbook/charts/carpet/view';
import { ContourChart } from '../../../workbook/charts/contour/view';
import type { SweepChartProps } from '../../../workbook/charts/frame/props';
import { HistogramChart } from '../../../workbook/charts/histogram/view';
import { LeverChart } from '../../../workbook/charts/levers/view';
import { LineChart } from '../../../workbook/charts/line/view';
import { MomentChart } from '../../../workbook/charts/moments/view';
import { RingChart } from '../../../workbook/charts/ring/view';
import { ScatterChart } from '../../../workbook/charts/scatter/view';
import { ShareChart } from '../../../workbook/charts/shares/view';
import { alongProps } from './along-data';
import { gridProps } from './grid-data';
import { leversProgress } from './levers-data';
import { partsProps, ringProps } from './parts-data';
import { spreadChart } from './spread-data';
import {
  balanceChart,
  balanceGhost,
  balanceSweep,
  checks,
  designValues,
  optionTitles,
  pullChart,
  pullSweep,
  stationSweep,
  sweepNames,
} from './sweeps';

const common = { names: sweepNames, checks, optionTitle: (_: string, option: string) => optionTitles[option] };
const balance: SweepChartProps = {
  ...common,
  ...{ cell: balanceChart, progress: balanceSweep, values: designValues(-0.145) },
  ...{ baseline: designValues(-0.158, 0), ghost: balanceGhost },
};
const pull: SweepChartProps = {
  ...common,
  cell: pullChart,
  progress: pullSweep,
  values: designValues(),
  baseline: designValues(-0.15, 1, 17),
};
const across: Partial<SweepChartProps['cell']> = {
  chart: 'bars',
  title: 'CG by tail stock',
  across: 'tail_stock',
  lines: '',
};

/** Every kind of chart from fixed data, at a width. */
export const charts: Readonly<Record<string, (width: number) => ComponentChild>> = {
  'bars-of-options': (width) => (
    <BarChart
      {...balance}
      cell={{ ...balanceChart, ...across }}
      ghost={{ ...balanceGhost, axes: [balanceSweep.axes[1]!] }}
      width={width}
    />
  ),
  'bars-of-parts': (width) => <BarChart {...partsProps()} width={width} />,
  'bars-of-moments': (width) => <BarChart {...partsProps({ up: ['moment'] })} width={width} />,
  moments: (width) => <MomentChart {...partsProps({ chart: 'moments', title: 'Moments', up: [] })} width={width} />,
  'shares-of-a-spread': (width) => <ShareChart {...spreadChart('shares')} width={width} />,
  'histogram-of-a-spread': (width) => <HistogramChart {...spreadChart('histogram')} width={width} />,
  'scatter-of-a-spread': (width) => (
    <ScatterChart {...spreadChart('scatter', { across: 'line_length' })} width={width} />
  ),
  levers: (width) => (
    <LeverChart
      {...pull}
      cell={{ ...pullChart, title: 'Tornado chart' }}
      checks={[]}
      progress={leversProgress()}
      width={width}
    />
  ),
  contour: (width) => (
    <ContourChart {...gridProps({ chart: 'contour', checks: ['pull_check', 'roll_check'] })} width={width} />
  ),
  carpet: (width) => <CarpetChart {...gridProps({ up: ['flight.pull', 'flight.outboard_low'] })} width={width} />,
  scatter: (width) => (
    <ScatterChart
      {...pull}
      cell={{ ...pullChart, chart: 'scatter', across: 'flight.lap_time', up: ['flight.pull_per_weight'] }}
      width={width}
    />
  ),
  histogram: (width) => (
    <HistogramChart
      {...pull}
      cell={{ ...pullChart, chart: 'histogram', up: ['flight.pull_per_weight', 'flight.lap_time'] }}
      width={width}
    />
  ),
  ring: (width) => <RingChart {...ringProps()} width={width} />,
  along: (width) => <AlongChart {...alongProps()} width={width} />,
  'lines-together': (width) => (
    <LineChart
      {...balance}
      cell={{ ...balanceChart, up: ['balance.cg_x', 'balance.leadout_x'], lines: '', together: true }}
      progress={stationSweep}
      ghost={undefined}
      width={width}
    />
  ),
};
