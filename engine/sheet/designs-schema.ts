import { DESIGNS_FORMAT, DESIGNS_VERSION } from './document';

/** What the published schema says of such a file, where its root is one design. */
export const designsSchema = {
  description: 'A file with several designs, at most 50 MB; each is kept as a design of its own.',
  type: 'object',
  properties: {
    format: { const: DESIGNS_FORMAT },
    version: { const: DESIGNS_VERSION },
    designs: { type: 'array', items: { $ref: '#' }, minItems: 1 },
  },
  required: ['format', 'version', 'designs'],
  additionalProperties: false,
} as const;
