import * as v from 'valibot';
import type { Builder } from './build';
import type { Rewrite, Text } from './cells/kind';
import { mapFields, mapRows, withRow } from './cells/rows';
import type { Document, Material } from './document';
import { MATERIAL_NUMBERS } from './material-numbers';

/** Materials that live with the document. They belong to no cell but have texts, names and references like one. */
export const materialSchema = v.strictObject({
  name: v.string(),
  title: v.string(),
  density: v.string(),
  modulus: v.string(),
  source: v.string(),
});

export const materialTexts = (document: Document): Text[] =>
  document.materials.flatMap((material) =>
    MATERIAL_NUMBERS.map(({ name }) => ({ path: `${material.name}.${name}`, text: material[name] })),
  );

/** The document with one text of its materials replaced; undefined where the path isn't one of them. */
export function putInMaterials(document: Document, path: string, text: string): Document | undefined {
  for (const [k, material] of document.materials.entries()) {
    const number = MATERIAL_NUMBERS.find(({ name }) => path === `${material.name}.${name}`);
    if (!number) continue;
    return { ...document, materials: withRow(document.materials, k, { ...material, [number.name]: text }) };
  }
  return undefined;
}

export function rewriteMaterials(materials: readonly Material[], { formula }: Rewrite): readonly Material[] {
  return mapRows(materials, (material) =>
    mapFields(material, { density: formula(material.density), modulus: formula(material.modulus) }),
  );
}

export function layOwnMaterials(document: Document, builder: Builder): void {
  for (const material of document.materials) {
    if (!builder.claim(material.name, '')) continue;
    for (const { name, title, symbol, dimension, unit } of MATERIAL_NUMBERS) {
      builder.text({
        cell: '',
        path: `${material.name}.${name}`,
        text: material[name],
        kind: 'material',
        title: `${material.title}: ${title}`,
        symbol,
        doc: material.source,
        unit,
        wants: { dimension },
        blank: name === 'modulus' ? Number.NaN : undefined,
      });
    }
  }
}
