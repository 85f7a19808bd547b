import { readFileSync } from 'node:fs';
import { parseSync } from 'vite';

/** A text of the sources that may be read on the screen. */
export interface Text {
  readonly file: string;
  readonly line: number;
  readonly text: string;
}

interface Node {
  readonly type: string;
  readonly start: number;
  readonly name?: { readonly name: unknown };
  readonly value?: unknown;
  readonly declaration?: unknown;
  readonly quasis?: readonly { readonly value: { readonly cooked: string } }[];
  readonly expressions?: unknown;
}

/** Attributes of the page that nobody reads. */
const UNREAD: ReadonlySet<string> = new Set(['class', 'id', 'key', 'type', 'for', 'role', 'd', 'transform', 'viewBox']);

/** Every text in one file of TypeScript, a template with … where it is filled in; names of modules and types are none. */
export function textsOf(file: string, source: string): Text[] {
  const { program } = parseSync(file, source);
  const texts: Text[] = [];
  const add = (start: number, text: string): void => {
    texts.push({ file, line: source.slice(0, start).split('\n').length, text });
  };
  const walk = (node: unknown): void => {
    if (Array.isArray(node)) for (const each of node) walk(each);
    if (!isNode(node)) return;
    if (/^(Import|Export(All|Named)Declaration|TSLiteralType)/.test(node.type) && !node.declaration) return;
    if (node.type === 'JSXAttribute' && UNREAD.has(String(node.name?.name))) return;
    if (node.type === 'Literal' && typeof node.value === 'string') add(node.start, node.value);
    if (node.type === 'JSXText') add(node.start, String(node.value).replace(/\s+/g, ' ').trim());
    if (node.type === 'TemplateLiteral') {
      add(node.start, (node.quasis ?? []).map(({ value }) => value.cooked).join('…'));
      walk(node.expressions);
      return;
    }
    for (const child of Object.values(node)) if (typeof child === 'object') walk(child);
  };
  walk(program);
  return texts;
}

const isNode = (node: unknown): node is Node =>
  typeof node === 'object' && node !== null && typeof (node as Node).type === 'string';

/** Every text in a file of plain data that is read as words: what stands under one of these keys. */
export function textsOfData(file: string, keys: ReadonlySet<string>): Text[] {
  const texts: Text[] = [];
  JSON.parse(readFileSync(file, 'utf8'), (key, value: unknown) => {
    if (keys.has(key) && typeof value === 'string') texts.push({ file, line: 0, text: value });
    return value;
  });
  return texts;
}
