import type { Random } from './random';

/** The part of JSON Schema that the published one uses. */
export interface Schema {
  readonly $ref?: string;
  readonly $defs?: Readonly<Record<string, Schema>>;
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly oneOf?: readonly Schema[];
  readonly anyOf?: readonly Schema[];
  readonly type?: string;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: boolean | Schema;
  readonly items?: Schema;
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly minLength?: number;
  readonly pattern?: string;
  readonly minimum?: number;
  readonly maximum?: number;
}

const TEXTS = ['', '12 mm', '2 × wing.span', 'balsa', 'Möwe №2', '"', '\\', '\u2028', '0'];
const MOST = 4;

/** A random value that a schema allows. Ids are few, so that some stand twice. */
export function valueFrom(schema: Schema, root: Schema, random: Random): unknown {
  if (schema.$ref) return valueFrom(root.$defs![schema.$ref.split('/').at(-1)!]!, root, random);
  if (schema.const !== undefined) return schema.const;
  if (schema.enum) return random.pick(schema.enum);
  const either = schema.oneOf ?? schema.anyOf;
  if (either) return valueFrom(random.pick(either), root, random);
  switch (schema.type) {
    case 'object':
      return schema.properties ? group(schema, root, random) : record(schema, root, random);
    case 'array':
      return Array.from(
        { length: Math.min(schema.maxItems ?? Number.POSITIVE_INFINITY, (schema.minItems ?? 0) + random.below(MOST)) },
        () => valueFrom(schema.items!, root, random),
      );
    case 'string':
      // The one pattern is that of a picture.
      if (schema.pattern) return `data:image/png;base64,${'QUJD'.repeat(random.below(MOST) + 1)}`;
      return schema.minLength ? `c${random.below(6)}` : random.pick(TEXTS);
    case 'boolean':
      return random.below(2) === 0;
    case 'integer':
      return (schema.minimum ?? -2) + random.below(2000);
    case 'number':
      return (schema.minimum ?? -2) + random.next();
    default:
      throw new Error(`The generator knows nothing of ${JSON.stringify(schema)}`);
  }
}

function group(schema: Schema, root: Schema, random: Random): object {
  const entries = Object.entries(schema.properties!).filter(
    ([name]) => schema.required?.includes(name) || random.below(2) === 0,
  );
  return Object.fromEntries(entries.map(([name, each]) => [name, valueFrom(each, root, random)]));
}

function record(schema: Schema, root: Schema, random: Random): object {
  const names = Array.from({ length: random.below(MOST) }, () => random.pick(['span', 'wing.span', 'x_1', '7', '']));
  return Object.fromEntries(
    names.map((name) => [name, valueFrom(schema.additionalProperties as Schema, root, random)]),
  );
}

type Holder = Record<string, unknown> | unknown[];

/** Spoils a value somewhere: takes a part away, puts one more in, or puts something else in its place. */
export function spoil(value: unknown, names: readonly string[], random: Random): unknown {
  const holders: Holder[] = [];
  const gather = (each: unknown): void => {
    if (typeof each !== 'object' || each === null) return;
    holders.push(each as Holder);
    Object.values(each).forEach(gather);
  };
  const copy = structuredClone(value);
  gather(copy);
  const holder = random.pick(holders);
  const keys = Object.keys(holder);
  const at = keys.length > 0 ? random.pick(keys) : undefined;
  const strange = random.pick<unknown>([3, 2.5, -1, null, true, '', 'tartan', [], ['12 mm'], {}, { span: 3 }]);
  const way = random.below(3);
  if (way === 0 && at !== undefined && !Array.isArray(holder)) delete holder[at];
  else if (way === 1 && !Array.isArray(holder)) put(holder, random.pick([...names, 'colour', 'fields']), strange);
  else if (at !== undefined) put(holder, at, strange);
  return copy;
}

/** As an own part, whatever its name. */
const put = (holder: Holder, name: string, value: unknown): void => {
  Object.defineProperty(holder, name, { value, enumerable: true, configurable: true, writable: true });
};
