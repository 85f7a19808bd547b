import text from '../../data/propeller-agreement.csv?raw';
import { readCsv } from './csv';

/** How near blade elements come to one measured propeller; computed over measured less one. */
export type PropellerAgreement = Readonly<Record<string, string>>;

/** Made by `npm run reference` from the measured sets; a published check holds it to them. */
export const propellerAgreement: readonly PropellerAgreement[] = readCsv(text).map((row) => row.values);
