/** One term of a finish: coats of something the library knows, or whatever else was written. */
export type Coat = { readonly finish: string; readonly count: number } | { readonly text: string };

const TERM = /^(?:(\d+)\s*[×*]\s*)?([A-Za-z]\w*)\.areal_mass$/;

/** Reads "2 × dope_clear.areal_mass + 62 g/m²" into its terms; a text with parentheses is one term. */
export function readCoats(text: string): readonly Coat[] {
  if (text.trim() === '') return [];
  const terms = /[()?:]/.test(text) ? [text] : text.split('+');
  return terms.map((each): Coat => {
    const found = TERM.exec(each.trim());
    return found ? { finish: found[2]!, count: Number(found[1] ?? 1) } : { text: each.trim() };
  });
}

export function writeCoats(coats: readonly Coat[]): string {
  return coats
    .map((coat) => {
      if ('text' in coat) return coat.text;
      return coat.count === 1 ? `${coat.finish}.areal_mass` : `${coat.count} × ${coat.finish}.areal_mass`;
    })
    .join(' + ');
}

/** One coat more: counted with those of the same finish, else at the end. */
export function withCoat(coats: readonly Coat[], finish: string): readonly Coat[] {
  const at = coats.findIndex((coat) => 'finish' in coat && coat.finish === finish);
  const same = coats[at];
  if (!same || !('finish' in same)) return [...coats, { finish, count: 1 }];
  return coats.with(at, { finish, count: same.count + 1 });
}
