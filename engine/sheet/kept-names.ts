/**
 * Names that every group of named values has of itself in this language. As a name in a file they would be passed over or
 * mistaken for something that is there, so they are refused.
 */
export const KEPT_NAMES: readonly string[] = [
  '__defineGetter__',
  '__defineSetter__',
  '__lookupGetter__',
  '__lookupSetter__',
  '__proto__',
  'constructor',
  'hasOwnProperty',
  'isPrototypeOf',
  'propertyIsEnumerable',
  'prototype',
  'toLocaleString',
  'toString',
  'valueOf',
];
