import { partsResults, partsRole } from '../../blocks/parts/results';
import { LAYER_STRIDE, PART_STRIDE } from '../../physics/index';
import type { TradeSteps } from '../specs';
import { foldPartsStep } from './fold-parts';
import { foldLayersStep, layerStep } from './layers';
import { partStep } from './part';

/** The steps that compute with physics, as the cell kinds are given them. */
export const tradeSteps: TradeSteps = {
  partStride: PART_STRIDE,
  layerStride: LAYER_STRIDE,
  partsRole,
  partsResults,
  part: partStep,
  foldParts: foldPartsStep,
  layer: layerStep,
  foldLayers: foldLayersStep,
};
