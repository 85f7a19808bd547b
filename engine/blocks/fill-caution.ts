/** Fills the holes of a sentence; `show` gives undefined where there is no value. */
export function fillCaution(sentence: string, show: (name: string, unit: string) => string | undefined): string {
  return sentence.replace(/\[([^\]]*)\]/g, (_, piece: string) => {
    let missing = false;
    const filled = piece.replace(/\{(\w+)\|([^}]+)\}/g, (_hole, name: string, unit: string) => {
      const value = show(name, unit);
      missing ||= value === undefined;
      return value ?? '';
    });
    return missing ? '' : filled;
  });
}
