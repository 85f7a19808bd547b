export { FieldView } from './view';
