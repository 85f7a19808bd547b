import { readFileSync } from 'node:fs';
import { encode } from 'uqr';
import { describe, expect, test } from 'vitest';
import { serialise } from '../../../engine/sheet/file';
import { fromBase45, toBase45 } from '../../../workbook/sharing/base45';
import { isWhole, packDesign, takePart, takePasted, unpackDesign } from '../../../workbook/sharing/packed';
import { fileToShare } from '../../../workbook/sharing/share-file';
import { begun, forms } from '../../engine/study/place/begun';
import { smallSheet } from '../store/small-sheet';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

describe('base45 is that of RFC 9285', () => {
  test.each([
    ['AB', 'BB8'],
    ['Hello!!', '%69 VD92EX0'],
    ['base-45', 'UJCLQE7W581'],
    ['ietf!', 'QED8WEX0'],
  ])('%s', (plain, letters) => {
    expect(toBase45(bytes(plain))).toBe(letters);
    expect(fromBase45(letters)).toEqual(bytes(plain));
  });
  test('what is none is refused: GGW stands for 65536, which are no two bytes', () => {
    expect(fromBase45('GGW')).toBeUndefined();
    expect(fromBase45('BB8x')).toBeUndefined();
    expect(fromBase45('B')).toBeUndefined();
    expect(fromBase45('')).toEqual(new Uint8Array(0));
  });
});

describe('a design as pictures', () => {
  const text = serialise(begun(forms[0]!));

  test('a small one is one picture, a begun one a few, and comes back to the byte whatever the order', async () => {
    expect(await packDesign(serialise(smallSheet))).toHaveLength(1);
    const parts = (await packDesign(text))!;
    expect(parts.length).toBeGreaterThan(1);
    const read = parts.toReversed().reduce<ReturnType<typeof takePart>>((so, part) => takePart(so, part), undefined)!;
    expect(isWhole(read)).toBe(true);
    expect(serialise(JSON.parse((await unpackDesign(read))!))).toBe(text);
    const pasted = takePasted(`${parts.join('\r\n')}\n`)!;
    expect(await unpackDesign(pasted)).toBe(await unpackDesign(read));
  });
  test('each is held by a picture that a phone reads from a screen', async () => {
    for (const part of (await packDesign(text))!) {
      expect(part).toMatch(/^[0-9A-Z $%*+\-./:]+$/);
      expect(encode(part, { ecc: 'L' }).version).toBeLessThanOrEqual(24);
    }
  });
  test('one that takes too many is no picture: the file is the way', async () => {
    const demo = readFileSync(new URL('../../../data/designs/quern-25.tetherwright.json', import.meta.url), 'utf8');
    expect(await packDesign(demo)).toBeUndefined();
  });
  test('what is misread is told from what is missing, and another design begins anew', async () => {
    const parts = (await packDesign(text))!;
    const half = takePart(undefined, parts[0]!)!;
    expect([isWhole(half), half.parts.size, half.count]).toEqual([false, 1, parts.length]);
    expect(takePart(half, 'https://example.org')).toBe(half);
    expect(takePart(half, 'TETHERWRIGHT 9/3 ABC:123')).toBe(half);
    const wrong = parts.map((part, k) => (k === 0 ? `${part.slice(0, -1)}${part.endsWith('0') ? '1' : '0'}` : part));
    expect(await unpackDesign(takePasted(wrong.join('\n'))!)).toBeUndefined();
    const [other] = (await packDesign(serialise(smallSheet)))!;
    expect(takePart(half, other!)).toMatchObject({ count: 1 });
  });
});

describe('the system is offered a file that it takes', () => {
  const share = async (): Promise<void> => {};
  const taking = (ending: string) => ({
    share,
    canShare: (data?: ShareData) => data?.files?.every(({ name }) => name.endsWith(ending)) ?? false,
  });
  test.each([
    ['.json', 'own-stunt.tetherwright.json', 'application/json'],
    ['.txt', 'own-stunt.tetherwright.txt', 'text/plain'],
  ])('of %s', async (ending, name, type) => {
    const file = fileToShare('{}', 'Own stunt', taking(ending))!;
    expect([file.name, file.type.split(';')[0], await file.text()]).toEqual([name, type, '{}']);
  });
  test('and none where it takes none, or has no such sheet', () => {
    expect(fileToShare('{}', 'Own stunt', taking('.pdf'))).toBeUndefined();
    expect(fileToShare('{}', 'Own stunt', {})).toBeUndefined();
  });
});
