import type { SweepProgress } from '../../../engine/index';

/** Line length up and down, both other tail stocks and the engine station, tried on a made-up design. */
export const leversProgress = (): SweepProgress => ({
  ...{ revision: 1, sweep: 'tried', axes: [], wanted: ['flight.pull', 'flight.lap_time'], sentences: [] },
  columns: [Float64Array.of(23.15, 24.88, 23.6, 24.02, 24), Float64Array.of(5.14, 4.861, 5, 5.002, 5)],
  why: new Uint16Array(5),
  ...{ done: 5, total: 5, state: 'done' },
  levers: {
    changes: [
      { row: 0, path: 'line_length', way: 'up', from: 18.3, to: 18.8 },
      { row: 0, path: 'line_length', way: 'down', from: 18.3, to: 17.8 },
      { row: 1, path: 'tail_stock', way: 'to', from: 1, to: 0 },
      { row: 1, path: 'tail_stock', way: 'to', from: 1, to: 2 },
      { row: 2, path: 'engine_station', way: 'up', from: -0.15, to: -0.145 },
    ],
    present: [24, 5],
  },
});
