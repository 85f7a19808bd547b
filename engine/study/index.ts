export { answer } from './command/answer';
export { HELP, readArguments } from './command/arguments';
export { firstDesign } from './first-design/index';
export { type HangarService, hangarOf } from './hangar/index';
export { library } from './library';
export type { FromSampler, ToSampler } from './pool/messages';
export type { PoolPorts } from './pool/pool';
export { startSampler } from './pool/sampler';
export { startEngine } from './session';
