export { firstDesign } from './first-design';
