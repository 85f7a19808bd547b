export { type CornerCut, cutCorner } from './cut';
export { type FlightAttitude, gravityAtRest, gravityInFlight } from './gravity';
export { beyond, dot, isInside, type Place, type Polyhedron, prism, type Solid, solidOf } from './polyhedron';
export { placed, placedBody, type TankPlace, type TankSize, tankShape } from './shape';
export { type FuelSurface, fuelSurface, headAt, volumeBeyond } from './surface';
