export { AddHere } from './add-here';
export { Balloon } from './balloon';
export { commandsOf } from './cell-commands';
export { focusBalloon, focusContent } from './focus';
export { columnOf, gapsOf, standingDrawing } from './order';
export { TitleForm } from './title-form';
