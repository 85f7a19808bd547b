/**
 * What builders write for a unit besides its name: words written out, what they are shortened to, and marks. Common practice,
 * no source. They are read, never shown.
 */
const WORDS: Readonly<Record<string, readonly string[]>> = {
  '%': ['percent', 'per cent'],
  '°': ['degree', 'degrees'],
  mm: ['millimetre', 'millimetres', 'millimeter', 'millimeters'],
  cm: ['centimetre', 'centimetres', 'centimeter', 'centimeters'],
  m: ['metre', 'metres', 'meter', 'meters'],
  km: ['kilometre', 'kilometres', 'kilometer', 'kilometers'],
  thou: ['mil', 'mils'],
  in: ['inch', 'inches'],
  ft: ['foot', 'feet'],
  yd: ['yard', 'yards'],
  mi: ['mile', 'miles'],
  'cm³': ['cubic centimetre', 'cubic centimetres', 'cubic centimeter', 'cubic centimeters'],
  mL: ['millilitre', 'millilitres', 'milliliter', 'milliliters'],
  L: ['litre', 'litres', 'liter', 'liters'],
  'fl oz': ['fluid ounce', 'fluid ounces'],
  gal: ['gallon', 'gallons'],
  s: ['sec', 'secs', 'second', 'seconds'],
  min: ['mins', 'minute', 'minutes'],
  h: ['hr', 'hrs', 'hour', 'hours'],
  mg: ['milligram', 'milligrams'],
  g: ['gram', 'grams', 'gramme', 'grammes', 'gm', 'gms'],
  kg: ['kilogram', 'kilograms', 'kilo', 'kilos'],
  oz: ['ounce', 'ounces'],
  lb: ['lbs', 'pound', 'pounds'],
  N: ['newton', 'newtons'],
  W: ['watt', 'watts'],
  V: ['volt', 'volts'],
  A: ['amp', 'amps', 'ampere', 'amperes'],
  hp: ['horsepower', 'bhp'],
  'km/h': ['kmh', 'kilometres per hour', 'kilometers per hour'],
  mph: ['miles per hour'],
  kn: ['kt', 'kts', 'knot', 'knots'],
  'ft/s': ['fps', 'feet per second'],
  'm/s': ['metres per second', 'meters per second'],
  rpm: ['revs', 'revs/min', 'rev/min', 'r/min', 'revolutions per minute', 'turns per minute'],
  '°C': ['C', 'deg C', 'degrees C', '° C', 'celsius', 'degrees celsius'],
  '°F': ['F', 'deg F', 'degrees F', '° F', 'fahrenheit', 'degrees fahrenheit'],
};

/** Written with a point behind, as what is shortened. */
const SHORTENED = ['in', 'ft', 'yd', 'mi', 'oz', 'lb', 'lbs', 'sec', 'min', 'hr', 'fl oz', 'fl. oz', 'gal'];

/** What the capitals of a keyboard make of a unit, where nothing else is called so. */
const CAPITALS: Readonly<Record<string, readonly string[]>> = {
  mm: ['MM'],
  cm: ['CM'],
  in: ['IN', 'In'],
  ft: ['FT', 'Ft'],
  oz: ['OZ', 'Oz'],
  lb: ['LB', 'LBS', 'Lb', 'Lbs'],
  kg: ['KG', 'Kg'],
  'cm³': ['CC', 'CCM'],
  rpm: ['RPM', 'Rpm'],
  mph: ['MPH', 'Mph'],
  psi: ['PSI'],
  hp: ['HP', 'BHP'],
};

/** Marks behind a number. Those of a telephone lean to either side. */
const MARKS: Readonly<Record<string, readonly string[]>> = {
  in: ['"', '″', '”', '“', "''", '’’'],
  ft: ["'", '′', '’', '‘'],
};

const capitalised = (word: string): string => word[0]!.toUpperCase() + word.slice(1);
const isWord = (spelling: string): boolean => /^[a-z]{3}/.test(spelling);

const SQUARE: Readonly<Record<string, readonly string[]>> = {
  in: ['in', 'inch', 'inches'],
  ft: ['ft', 'foot', 'feet'],
  yd: ['yd', 'yard', 'yards'],
  mm: ['mm'],
  cm: ['cm'],
  dm: ['dm'],
  m: ['m', 'metre', 'metres', 'meter', 'meters'],
};

/** `sq in`, `square inches`, `cu. in.`, also below a stroke: `oz/sq ft`. */
function spelledPowers(name: string): string[] {
  const power = /^(.*\/)?(in|ft|yd|mm|cm|dm|m)([²³])$/.exec(name);
  if (!power) return [];
  const [, above = '', base, raised] = power as unknown as [string, string | undefined, string, string];
  const [short, long] = raised === '²' ? ['sq', 'square'] : ['cu', 'cubic'];
  const shortened = [
    `${short} ${base}`,
    `${short}. ${base}`,
    `${short}. ${base}.`,
    `${short}.${base}.`,
    `${short}.${base}`,
  ];
  const written = SQUARE[base]!.flatMap((word) => [`${long} ${word}`, `${short} ${word}`]);
  return [...new Set([...shortened, ...written, ...written.map(capitalised), `${short}${base}`])].map(
    (spelling) => above + spelling,
  );
}

/** `cm3`, `m/s2`: a raised digit is on no keyboard. */
const loweredPowers = (name: string): string => name.replaceAll('²', '2').replaceAll('³', '3').replaceAll('⁴', '4');

/** Everything else that is read for a unit with this name and these other spellings. */
export function alsoSaid(name: string, aliases: readonly string[]): string[] {
  const words = WORDS[name] ?? [];
  const all = [name, ...aliases, ...words];
  return [
    ...words,
    ...words.filter(isWord).flatMap((word) => [capitalised(word), word.toUpperCase()]),
    ...all.filter((spelling) => SHORTENED.includes(spelling)).map((spelling) => `${spelling}.`),
    ...(name === 'fl oz' ? ['fl. oz', 'fl. oz.'] : []),
    ...(name === 'in³' ? ['ci', 'cid', 'cuin'] : []),
    ...(CAPITALS[name] ?? []),
    ...(MARKS[name] ?? []),
    ...spelledPowers(name),
    ...[name, ...aliases].map(loweredPowers),
  ];
}
