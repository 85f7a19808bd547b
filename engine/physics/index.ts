export {
  foldLayers,
  LAYER_STRIDE,
  STACK_NAMES,
  surfaceStiffness,
  writeMassLayer,
  writeMaterialLayer,
} from './laminate';
export { FOLD_NAMES, foldParts, momentsAboutCg } from './mass';
export {
  ESTIMATE_SPREAD,
  finishMass,
  PART_STRIDE,
  type PartRow,
  rodMass,
  SCALE_SPREAD,
  STATION_SPREAD,
  sheetMass,
  solidMass,
  stackMass,
  writePart,
} from './part';
