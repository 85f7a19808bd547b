export {
  type AnyBlock,
  type Block,
  block,
  type Curve,
  type Field,
  isCurve,
  isLink,
  isOption,
  type Link,
  type Option,
  type Result,
  type Shape,
} from './block';
export { AIRSPEED_KNOTS } from './curve';
export { blocks } from './registry';
