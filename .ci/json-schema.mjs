// The JSON Schema of a design's file, from the declarations that the engine itself checks files with.
import { toJsonSchema } from '@valibot/to-json-schema';

/**
 * The text of data/tetherwright.schema.json.
 * @param {typeof import('../engine/sheet/schema')} declared
 */
export function jsonSchema({ fileSchema, cellSchemas, KEPT_NAMES }) {
  const schema = toJsonSchema(fileSchema, {
    target: 'draft-2020-12',
    definitions: cellSchemas,
    // What is read and what is written have one shape; a pipe's last schema says it.
    typeMode: 'output',
    overrideSchema: ({ valibotSchema, jsonSchema }) =>
      valibotSchema.type === 'record'
        ? { ...jsonSchema, propertyNames: { not: { enum: [...KEPT_NAMES] } } }
        : undefined,
  });
  const { $schema, ...rest } = schema;
  const told = {
    $schema,
    title: 'Tetherwright sheet',
    description:
      'A file that ends in .tetherwright.json. Every quantity is a text, as it was typed, with its unit. Beyond what is said here each cell has an id of its own, and a file has at most 5 MB.',
    ...rest,
  };
  return `${JSON.stringify(told, undefined, 2)}\n`;
}
