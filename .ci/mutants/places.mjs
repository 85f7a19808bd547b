// Where a text of physics can be made wrong, and how: a sign turned, a term dropped, a number or a result off by 5 %.
import { parseSync } from 'vite';

/**
 * @typedef {object} Mutant
 * @property {string} id file, function, what stands there and what takes its place
 * @property {string} file path from the project's root
 * @property {string} owner the function or constant it lies in
 * @property {boolean} isFunction
 * @property {number} line
 * @property {number} start
 * @property {number} end
 * @property {string} text what takes the place of start to end
 */
/** @typedef {any} Node of the syntax tree, or anything else in it */

const ARITHMETIC = new Set(['+', '-', '*', '/', '**']);
const TURNED = { '+': '-', '-': '+', '+=': '-=', '-=': '+=' };
/** Limits of arguments are held by the tests of messages, and a step this small only says when a search ends. */
const LIMITS = new Set(['within', 'positive', 'nonNegative']);
const TINY = 1e-8;

/** @param {Node} node */
const isArithmetic = (node) => node.type === 'BinaryExpression' && ARITHMETIC.has(node.operator);
/** @type {(node: Node) => boolean} */
const isText = (node) =>
  node.type === 'TemplateLiteral' ||
  (node.type === 'Literal' && typeof node.value === 'string') ||
  (node.type === 'BinaryExpression' && (isText(node.left) || isText(node.right)));

/** What is no arithmetic of the physics: places in arrays, loop heads, messages, limits, types. @param {Node} node @param {string} key */
function isLeftAlone(node, key) {
  if (node.type.startsWith('TS') && key !== 'expression') return true;
  if (node.type === 'MemberExpression') return node.computed && key === 'property';
  if (node.type === 'ForStatement') return key !== 'body';
  if (node.type === 'CallExpression') return LIMITS.has(node.callee.name) && key === 'arguments';
  if (node.type === 'BinaryExpression' && !ARITHMETIC.has(node.operator)) return node.operator !== '%';
  return ['ThrowStatement', 'NewExpression', 'TemplateLiteral'].includes(node.type);
}

/**
 * Every mutant of one file, in the order of its text.
 * @param {string} file path from the project's root
 * @param {string} source
 * @returns {Mutant[]}
 */
export function mutantsOf(file, source) {
  const { program, errors } = parseSync(file, source);
  if (errors.length > 0) throw new Error(`${file} can't be read: ${errors[0]?.message}`);
  /** @type {Mutant[]} */
  const found = [];
  let owner = '';
  let isFunction = false;
  /** @type {Map<string, number>} */
  const times = new Map();

  /** @param {Node} node @param {string} text @param {string} was @param {string} now @param {number} at where a reader looks for it */
  const add = ({ start, end }, text, was, now, at = start) => {
    const name = `${file} ${owner}: ${was} → ${now}`.replace(/\s+/g, ' ');
    const nth = (times.get(name) ?? 0) + 1;
    times.set(name, nth);
    const line = source.slice(0, at).split('\n').length;
    found.push({ id: nth > 1 ? `${name} (${nth})` : name, file, owner, isFunction, line, start, end, text });
  };
  /** @param {Node} node */
  const textOf = (node) => source.slice(node.start, node.end);

  /** @param {Node} node @param {boolean} inside whether the parent is arithmetic already */
  const mutate = (node, inside) => {
    if (isArithmetic(node)) {
      const right = textOf(node.right);
      if (node.operator === '+' || node.operator === '-') {
        const left = textOf(node.left);
        const turned = TURNED[/** @type {'+'} */ (node.operator)];
        const was = `${node.operator} ${right}`;
        add(node, `((${left}) ${turned} (${right}))`, was, `${turned} ${right}`, node.right.start);
        add(node, `(${left})`, was, 'nothing', node.right.start);
      }
      if (!inside) add(node, `(1.05 * (${textOf(node)}))`, textOf(node), '5 % more');
    }
    if (node.type === 'AssignmentExpression' && (node.operator === '+=' || node.operator === '-=')) {
      const [left, right] = [textOf(node.left), textOf(node.right)];
      const turned = TURNED[/** @type {'+='} */ (node.operator)];
      add(node, `${left} ${turned} ${right}`, textOf(node), turned);
      add(node, `${left} += 0`, textOf(node), 'nothing');
    }
    if (node.type === 'UnaryExpression' && node.operator === '-' && node.argument.type !== 'Literal') {
      add(node, `(${textOf(node.argument)})`, textOf(node), textOf(node.argument));
    }
    if (node.type === 'Literal' && typeof node.value === 'number' && Math.abs(node.value) > TINY) {
      const more = String(Number((node.value * 1.05).toPrecision(15)));
      add(node, more, textOf(node), more);
    }
  };

  /** @param {Node} node @param {boolean} inside */
  const walk = (node, inside) => {
    if (isArithmetic(node) && isText(node)) return;
    mutate(node, inside);
    for (const [key, child] of Object.entries(node)) {
      if (isLeftAlone(node, key)) continue;
      for (const each of Array.isArray(child) ? child : [child]) {
        if (each && typeof each.type === 'string')
          walk(each, isArithmetic(node) || (inside && node.type === 'ParenthesizedExpression'));
      }
    }
  };

  for (const { name, node, body } of ownersOf(program)) {
    owner = name;
    isFunction = body !== undefined;
    walk(node, false);
  }
  return found.sort((a, b) => a.start - b.start);
}

/**
 * Functions and constants at the top of a file, each by its name.
 * @param {Node} program
 * @returns {{ name: string, node: Node, body: Node }[]} body: of a function, where its statements stand
 */
export function ownersOf(program) {
  return program.body.flatMap((/** @type {Node} */ statement) => {
    const declared = statement.type === 'ExportNamedDeclaration' ? statement.declaration : statement;
    if (declared?.type === 'FunctionDeclaration')
      return [{ name: declared.id.name, node: declared, body: declared.body }];
    if (declared?.type !== 'VariableDeclaration') return [];
    return declared.declarations.map((/** @type {Node} */ each) => {
      const isFunction = each.init?.type === 'ArrowFunctionExpression';
      return { name: each.id.name, node: each, body: isFunction ? each.init.body : undefined };
    });
  });
}

/**
 * The file with a mark at the start of every function, so that a run tells which test reaches it.
 * @param {string} file path from the project's root
 * @param {string} source
 */
export function markedSource(file, source) {
  let text = source;
  const bodies = ownersOf(parseSync(file, source).program).filter(({ body }) => body);
  for (const { name, body } of bodies.reverse()) {
    const mark = `globalThis.reachedFunctions?.add(${JSON.stringify(`${file} ${name}`)})`;
    text =
      body.type === 'BlockStatement'
        ? `${text.slice(0, body.start + 1)}${mark};${text.slice(body.start + 1)}`
        : `${text.slice(0, body.start)}(${mark}, ${text.slice(body.start, body.end)})${text.slice(body.end)}`;
  }
  return text;
}
