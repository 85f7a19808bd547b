/**
 * The layers of the project, from the bottom up, each with what it may import: the one place that says so. The rules of lint
 * (`npm run layers` writes them into biome.json) and the imports that a test plants are made from this list.
 *
 * @typedef {object} Layer
 * @property {string} name folder, or file without its ending
 * @property {'engine' | '.'} room where it lies
 * @property {'folder' | 'file'} kind
 * @property {readonly string[]} may names of layers below it that it may import
 * @property {string} is what it is for, ahead of what it may import
 * @property {true} [types] of the others it takes types alone
 */

/** @type {readonly Layer[]} */
export const layers = [
  { name: 'data', room: '.', kind: 'folder', may: [], is: 'holds tables and studies' },
  { name: 'exact', room: 'engine', kind: 'file', may: [], is: 'holds numbers that are exact by definition' },
  { name: 'units', room: 'engine', kind: 'folder', may: ['exact'], is: 'knows quantities and nothing else' },
  { name: 'numerics', room: 'engine', kind: 'folder', may: [], is: 'knows numbers and nothing else' },
  { name: 'physics', room: 'engine', kind: 'folder', may: ['exact', 'numerics'], is: 'computes with plain SI numbers' },
  { name: 'formula', room: 'engine', kind: 'folder', may: ['units'], is: 'knows names and dimensions' },
  { name: 'library', room: 'engine', kind: 'folder', may: ['data', 'units'], is: 'reads tables' },
  {
    name: 'terms',
    room: 'engine',
    kind: 'folder',
    may: ['units', 'formula'],
    is: 'holds the words that layers say to each other',
    types: true,
  },
  {
    name: 'blocks',
    room: 'engine',
    kind: 'folder',
    may: ['units', 'numerics', 'physics', 'library', 'terms'],
    is: 'wires physics to fields',
  },
  {
    name: 'sheet',
    room: 'engine',
    kind: 'folder',
    may: ['units', 'physics', 'formula', 'library', 'terms', 'blocks'],
    is: 'makes a program of a document',
  },
  {
    name: 'study',
    room: 'engine',
    kind: 'folder',
    may: ['data', 'units', 'numerics', 'physics', 'formula', 'library', 'terms', 'blocks', 'sheet'],
    is: 'runs programs for many samples',
  },
  {
    name: 'reference',
    room: 'engine',
    kind: 'folder',
    may: ['units', 'physics', 'formula', 'library', 'terms', 'blocks', 'sheet'],
    is: 'tells what is declared',
  },
  {
    name: 'protocol',
    room: 'engine',
    kind: 'file',
    may: ['terms', 'sheet', 'study', 'reference'],
    is: 'says what page and engine ask of each other',
    types: true,
  },
  { name: 'sampler', room: 'engine', kind: 'file', may: ['study'], is: 'runs samples for the worker' },
  { name: 'sampler-node', room: 'engine', kind: 'file', may: ['study'], is: 'runs samples for the command line' },
  { name: 'worker', room: 'engine', kind: 'file', may: ['study', 'reference', 'protocol'], is: 'answers the page' },
  { name: 'compute', room: 'engine', kind: 'file', may: ['study'], is: 'answers the command line' },
  {
    name: 'index',
    room: 'engine',
    kind: 'file',
    may: ['units', 'formula', 'library', 'terms', 'blocks', 'sheet', 'study', 'reference', 'protocol'],
    is: 'is the door for the page',
  },
  { name: 'workbook', room: '.', kind: 'folder', may: ['data', 'index'], is: 'shows and edits' },
  { name: 'tests', room: '.', kind: 'folder', may: [], is: 'imports everything, and nothing imports it' },
];

/** "engine/physics/", "engine/protocol", "workbook/". @param {Layer} layer */
export const placeOf = ({ name, room, kind }) =>
  `${room === '.' ? '' : `${room}/`}${name}${kind === 'folder' ? '/' : ''}`;

/** Layers that have a rule: data holds no imports, and tests may import all. */
export const ruled = layers.filter(({ name }) => name !== 'data' && name !== 'tests');

/** @param {Layer} layer */
export const allowedTo = ({ may }) => layers.filter(({ name }) => may.includes(name));

/** The sentence that refuses what a layer may not import. @param {Layer} layer */
export function sentenceOf(layer) {
  const may = allowedTo(layer).map(placeOf);
  const last = may.pop();
  const listed = may.length === 0 ? last : `${may.join(', ')} and ${last}`;
  return `${placeOf(layer)} ${layer.is}: of the project it may import ${last === undefined ? 'nothing' : `${listed} only`}.`;
}
