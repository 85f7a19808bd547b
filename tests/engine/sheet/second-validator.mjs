// A validator that knows nothing of this project but the published schema. It makes code from strings, which the tests of the
// engine refuse, so it runs in a process of its own: reads { schema, files } as JSON, and answers a list of verdicts.
import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';

/** @type {{ schema: object, files: string[] }} */
const { schema, files } = JSON.parse(readFileSync(0, 'utf8'));
const accepts = new Ajv2020({ strict: true }).compile(schema);
console.log(JSON.stringify(files.map((file) => accepts(JSON.parse(file)))));
