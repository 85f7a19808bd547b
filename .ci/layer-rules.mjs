import { allowedTo, ruled, sentenceOf } from './layers.mjs';

/** How many folders may stand between a layer's own and a file of it; a test looks for files that stand deeper. */
export const DEEPEST = 3;

/** @typedef {import('./layers.mjs').Layer} Layer */

/** @param {Layer} layer */
const roomOf = ({ room }) => (room === '.' ? '' : `${room}/`);

/** A file of a layer, `depth` folders below the layer's own. @param {Layer} layer @param {number} depth @param {string} folder @param {string} file */
export const fileOf = (layer, depth, folder, file) =>
  `${roomOf(layer)}${layer.name}${layer.kind === 'folder' ? `/${folder.repeat(depth)}${file}` : '.ts'}`;

/** The way from such a file up to the layer's room. @param {Layer} layer @param {number} depth */
const ups = (layer, depth) => (layer.kind === 'folder' ? depth + 1 : 0);

/** @param {number} folders */
const up = (folders) => (folders === 0 ? './' : '../'.repeat(folders));

/** How such a file would import another layer. @param {Layer} from @param {number} depth @param {Layer} to */
export function wayTo(from, depth, to) {
  const folders = ups(from, depth);
  if (from.room === to.room) return up(folders) + to.name;
  return from.room === '.' ? up(folders) + roomOf(to) + to.name : up(folders + 1) + to.name;
}

/** A rule of lint: what leaves the layer is refused, but for what the layer may import. @param {Layer} layer @param {number} depth */
function ruleAt(layer, depth) {
  const outside = layer.kind === 'folder' ? [`${up(ups(layer, depth))}**`] : ['./**', '../**'];
  const allowed = allowedTo(layer).map((to) => `!${wayTo(layer, depth, to)}${to.kind === 'folder' ? '/**' : ''}`);
  const patterns = [{ group: [...outside, ...allowed], message: sentenceOf(layer) }];
  const noRestrictedImports = { level: 'error', options: { patterns } };
  return { includes: [fileOf(layer, depth, '*/', '*')], linter: { rules: { style: { noRestrictedImports } } } };
}

/** @param {Layer} layer */
export const depthsOf = ({ kind }) =>
  kind === 'folder' ? Array.from({ length: DEEPEST + 1 }, (_, depth) => depth) : [0];

/** Every rule that keeps imports one way, as lint's configuration takes it. */
export const layerRules = () => ({
  overrides: ruled.flatMap((layer) => depthsOf(layer).map((depth) => ruleAt(layer, depth))),
});
