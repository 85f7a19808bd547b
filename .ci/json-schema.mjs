// The JSON Schema of a design's file, from the declarations that the engine itself checks files with.
import { toJsonSchema } from '@valibot/to-json-schema';

/**
 * The text of data/tetherwright.schema.json.
 * @param {typeof import('../engine/sheet/schema')} declared
 */
export function jsonSchema({ fileSchema, namedSchemas, designsSchema, KEPT_NAMES }) {
  const schema = toJsonSchema(fileSchema, {
    target: 'draft-2020-12',
    definitions: namedSchemas,
    // What is read and what is written have one shape; a pipe's last schema says it.
    typeMode: 'output',
    overrideSchema: ({ valibotSchema, jsonSchema }) =>
      valibotSchema.type === 'record'
        ? { ...jsonSchema, propertyNames: { not: { enum: [...KEPT_NAMES] } } }
        : undefined,
  });
  const { $schema, $defs, ...rest } = schema;
  const told = {
    $schema,
    title: 'Tetherwright design',
    description:
      'A file that ends in .tetherwright.json. Every quantity is a text, as it was typed, with its unit. Names are unique in the design, and a piece or a sheet whose id stands twice gets another. A file has at most 5 MB. “designs” among the definitions is a file with several.',
    ...rest,
    $defs: { ...$defs, designs: designsSchema },
  };
  return `${JSON.stringify(told, undefined, 2)}\n`;
}
