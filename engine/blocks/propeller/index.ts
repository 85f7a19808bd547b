export { propeller } from './calculated';
export { measuredPropeller } from './measured';
