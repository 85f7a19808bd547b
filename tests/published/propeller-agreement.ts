import { csvLine } from '../../engine/library/csv';
import { bladeShapes } from '../../engine/library/index';
import {
  alongBlade,
  bladeAngle,
  newPropellerState,
  type PreparedPropeller,
  preparePropeller,
  propellerState,
  shapedPropeller,
} from '../../engine/physics/index';
import { type MeasuredPropeller, type MeasuredState, measuredPropellers } from './propeller-rows';

/** Air of a tunnel near sea level: ISO 2533 at 15 °C. */
const AIR = { kinematicViscosity: 1.4607e-5, soundSpeed: 340.29 };

/** For the two whose blades were not measured: what a builder would pick. */
const SHAPES: Readonly<Record<string, string>> = { '7x4 nylon gf combustion': 'moulded', '8x6 thick sport': 'sport' };

/**
 * The propeller as the program takes it. The angles were read off photographs and differ from the marked pitch by up to 5°
 * either way (the authors: too low; ±2°), so the marked pitch sets the level at 75 % radius and the readings the twist
 * along the blade. Nothing else is known of the sections, and nothing is fitted to one propeller.
 */
export function computedPropeller({ name, diameter, pitch, blade }: MeasuredPropeller): PreparedPropeller {
  if (blade.length === 0) {
    const shape = bladeShapes.find((row) => row.name === SHAPES[name])!;
    return preparePropeller(shapedPropeller(shape, 2, diameter, pitch));
  }
  const radiusShare = blade.map((station) => station.radiusShare);
  const angles = blade.map((station) => station.angle);
  const shift = bladeAngle(pitch, 0.375 * diameter) - alongBlade(radiusShare, angles, 0.75);
  return preparePropeller({
    blades: 2,
    diameter,
    radiusShare,
    chordShare: blade.map((station) => station.chordShare),
    angle: angles.map((angle) => angle + shift),
  });
}

const state = newPropellerState();
export function computedState(propeller: PreparedPropeller, { rpm, J }: MeasuredState) {
  propellerState(propeller, J, rpm / 60, AIR, state);
  return { ...state };
}

/** Of the best measured efficiency. */
export const designPoint = ({ moving }: MeasuredPropeller): MeasuredState =>
  moving.reduce((best, row) => ((row.J * row.CT) / row.CP > (best.J * best.CT) / best.CP ? row : best));

/** The measured row nearest to a share of the advance ratio of best efficiency. */
export function nearDesign(propeller: MeasuredPropeller, share: number): MeasuredState {
  const wanted = share * designPoint(propeller).J;
  return propeller.moving.reduce((near, row) => (Math.abs(row.J - wanted) < Math.abs(near.J - wanted) ? row : near));
}

/** Computed over measured, less one. */
export function errors(propeller: PreparedPropeller, measured: MeasuredState) {
  const computed = computedState(propeller, measured);
  return { thrust: computed.thrust / measured.CT - 1, power: computed.power / measured.CP - 1 };
}

const percent = (share: number): string => {
  const rounded = Math.round(100 * share);
  return rounded > 0 ? `+${rounded} %` : rounded < 0 ? `−${-rounded} %` : '0 %';
};

export const SHARES = [0.5, 0.75, 1] as const;

/** How near each comes, as the reference shows it. */
export function agreementRows(): string[][] {
  const heading = ['propeller', 'blade', 'best J'];
  for (const share of SHARES) heading.push(`C_T at ${share * 100} %`, `C_P at ${share * 100} %`);
  heading.push('C_T at rest, slowest', 'C_T at rest, fastest', 'C_P at rest, slowest', 'C_P at rest, fastest');
  heading.push('rise of C_T measured', 'rise of C_T computed');
  const rows = measuredPropellers.map((measured) => {
    const computed = computedPropeller(measured);
    const [slow, fast] = [measured.still[0]!, measured.still.at(-1)!];
    const [atSlow, atFast] = [errors(computed, slow), errors(computed, fast)];
    const moving = SHARES.flatMap((share) => {
      const { thrust, power } = errors(computed, nearDesign(measured, share));
      return [percent(thrust), percent(power)];
    });
    return [
      measured.name,
      measured.blade.length > 0 ? 'measured chords' : `shape “${SHAPES[measured.name]}”`,
      designPoint(measured).J.toFixed(2),
      ...moving,
      ...[atSlow.thrust, atFast.thrust, atSlow.power, atFast.power].map(percent),
      percent(fast.CT / slow.CT - 1),
      percent(computedState(computed, fast).thrust / computedState(computed, slow).thrust - 1),
    ];
  });
  return [heading, ...rows];
}

/** The text of data/propeller-agreement.csv. */
export const agreementCsv = (): string => agreementRows().map(csvLine).join('').replaceAll('\r\n', '\n');
