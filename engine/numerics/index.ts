export { solveDense } from './dense';
export { gaussLegendre, integrate, type Quadrature } from './gauss-legendre';
export { interpolate, interpolateAt, type Table } from './monotone-cubic';
export { findRoot, type Root, type RootOptions } from './root';
