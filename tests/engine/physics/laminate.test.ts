import { describe, expect, it } from 'vitest';
import {
  foldLayers,
  LAYER_STRIDE,
  surfaceStiffness,
  writeMassLayer,
  writeMaterialLayer,
} from '../../../engine/physics/laminate';

type Layer =
  | readonly [thickness: number, density: number, modulus: number, bendingModulus?: number]
  | readonly [arealMass: number];
function stack(...layers: Layer[]) {
  const rows = new Float64Array(layers.length * LAYER_STRIDE);
  layers.forEach((layer, i) => {
    if (layer.length > 1) {
      const [thickness, density, modulus, bending = modulus] = layer as readonly [number, number, number, number?];
      writeMaterialLayer(thickness, density, modulus, bending, rows, i * LAYER_STRIDE, 1);
    } else writeMassLayer(layer[0], rows, i * LAYER_STRIDE, 1);
  });
  const out = new Float64Array(3);
  foldLayers(rows, layers.length, out);
  return { arealMass: out[0]!, thickness: out[1]!, stiffness: out[2]! };
}

describe('a stack of layers', () => {
  it('of one sheet has E t³/12 per width', () => {
    const sheet = stack([0.005, 160, 3.4e9]);
    expect(sheet.arealMass).toBeCloseTo(0.8, 14);
    expect(sheet.thickness).toBe(0.005);
    expect(sheet.stiffness).toBeCloseTo((3.4e9 * 0.005 ** 3) / 12, 10);
  });
  it('of one sheet sliced anywhere is that sheet', () => {
    const whole = stack([0.006, 160, 3e9]);
    const sliced = stack([0.001, 160, 3e9], [0.0035, 160, 3e9], [0.0015, 160, 3e9]);
    expect(sliced.stiffness / whole.stiffness).toBeCloseTo(1, 13);
    expect(sliced.thickness).toBeCloseTo(whole.thickness, 15);
  });
  it('of two equal faces over a core has the closed form of a sandwich', () => {
    const [t, c, face, core] = [0.0004, 0.0032, 10e9, 0.2e9];
    const sandwich = stack([t, 700, face], [c, 100, core], [t, 700, face]);
    const byHand = face * ((t * (c + t) ** 2) / 2 + (2 * t ** 3) / 12) + (core * c ** 3) / 12;
    expect(sandwich.stiffness / byHand).toBeCloseTo(1, 13);
  });
  it('has its neutral axis where E weighs it: a bimetal strip', () => {
    const [t1, t2, e1, e2] = [0.002, 0.003, 70e9, 200e9];
    const pair = stack([t1, 2700, e1], [t2, 7850, e2]);
    const byHand =
      (e1 * t1 ** 3 + e2 * t2 ** 3) / 12 + (((e1 * t1 * e2 * t2) / (e1 * t1 + e2 * t2)) * (t1 + t2) ** 2) / 4;
    expect(pair.stiffness / byHand).toBeCloseTo(1, 13);
  });
  it('reads the same from either face', () => {
    const layers: Layer[] = [[0.001, 500, 9e9], [0.05], [0.003, 120, 3e9], [0.0005, 800, 12e9]];
    const one = stack(...layers);
    const other = stack(...[...layers].reverse());
    expect(other.stiffness / one.stiffness).toBeCloseTo(1, 13);
    expect(other.arealMass).toBeCloseTo(one.arealMass, 14);
  });
  it('takes a glue line as mass alone', () => {
    const dry = stack([0.002, 160, 3e9], [0.002, 160, 3e9]);
    const glued = stack([0.002, 160, 3e9], [0.04], [0.002, 160, 3e9]);
    expect(glued.arealMass - dry.arealMass).toBeCloseTo(0.04, 15);
    expect(glued.stiffness).toBe(dry.stiffness);
  });
  it('keeps mass and thickness where a modulus is not known', () => {
    const unknown = stack([0.002, 160, Number.NaN]);
    expect(unknown.arealMass).toBeCloseTo(0.32, 15);
    expect(unknown.stiffness).toBeNaN();
  });
  it('of one sheet of plies bends as its plies laid one by one', () => {
    // Three equal plies, the middle one across: stretching by the mean of the plies, bending mostly by the outer ones.
    const [along, across, t] = [13.2e9, 0.66e9, 0.001];
    const plies = stack([t, 700, along], [t, 700, across], [t, 700, along]);
    const sheet = stack([3 * t, 700, (2 * along + across) / 3, (26 * along + across) / 27]);
    expect(sheet.stiffness / plies.stiffness).toBeCloseTo(1, 13);
  });
  it('of two sheets of plies is their plies laid one by one, as near as the moduli of a sheet can say', () => {
    const [along, across, t] = [13.2e9, 0.66e9, 0.0002];
    const plies = (a: number, b: number): Layer[] => [
      [t, 700, a],
      [t, 700, b],
      [t, 700, a],
    ];
    const core: Layer = [0.003, 100, 2e9];
    const byPlies = stack(...plies(along, across), core, ...plies(along, across));
    const face: Layer = [3 * t, 700, (2 * along + across) / 3, (26 * along + across) / 27];
    expect(stack(face, core, face).stiffness / byPlies.stiffness).toBeCloseTo(1, 12);
  });
  it('of no layers is nothing', () => {
    expect(stack()).toEqual({ arealMass: 0, thickness: 0, stiffness: 0 });
  });
  it('gives a surface EI by its chord', () => {
    expect(surfaceStiffness(35, 0.1)).toBeCloseTo(3.5, 15);
    expect(() => surfaceStiffness(35, -0.1)).toThrow(new RangeError('chord is -0.1; it must be 0 or greater'));
  });
});
