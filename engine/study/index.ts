export { answer } from './command/answer';
export { HELP, readArguments } from './command/arguments';
export { library } from './library';
export { startEngine } from './session';
