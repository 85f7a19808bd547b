import { type Live, numberAt } from '../../sheet/live';
import { inUnitsOf } from '../../units/index';
import type { Known, KnownLap } from './cells';
import { readEntry } from './form';
import { othersOf, type Weighed } from './rules';
import type { FirstDesignForm } from './told';

/** What was weighed and timed, written as numbers of the model as it is begun: they stay while the design changes. */
export function knownOf(form: FirstDesignForm, live: Live): Known {
  const weighed = form.weight === '' ? {} : { weighed: weighedOf(form, live) };
  const fast = numberAt(live, 'flight.test_margin') < 1 ? { fast: true } : {};
  if (form.lap_time === '') return { ...weighed, ...fast };
  const lap = lapOf(form, live);
  return { ...weighed, ...fast, lap, timed: TIMED_WITH };
}

/** 0 °C in K. */
const ICE_POINT = 273.15;
const grams = (kilograms: number): string => `${Number((kilograms * 1000).toFixed(1))} g`;

function weighedOf(form: FirstDesignForm, live: Live): Weighed {
  const entry = readEntry('weight', form.weight);
  const others = othersOf(form.drive).reduce((sum, name) => sum + numberAt(live, name), 0);
  const area = numberAt(live, 'wing_area') * 100;
  const set = live.compiled.document.units;
  return {
    mass: grams(entry.ok ? (entry.si ?? 0) : 0),
    others: grams(others),
    area: `${Number(area.toFixed(3))} dm²`,
    said: {
      others: inUnitsOf(`${Math.round(others * 1000)} g`, set, 3),
      area: inUnitsOf(`${Number(area.toPrecision(3))} dm²`, set, 3),
    },
  };
}

/** The set-up on which the lap was timed, as texts of the engine's fields. */
function lapOf(form: FirstDesignForm, live: Live): KnownLap {
  const at = (path: string): number => numberAt(live, path);
  const number = (x: number, scale: number, digits: number): string => String(Number((x * scale).toFixed(digits)));
  return {
    lap_time: form.lap_time,
    known_mass: grams(at('parts.mass')),
    known_radius: `${number(at('lines.guide_radius'), 1, 3)} m`,
    known_arm: `${number(at('balance.cg_y') - at('leadouts.guide_y'), 1000, 0)} mm`,
    known_height: `${number(at('flight.height') - at('flight.handle_height'), 1, 2)} m`,
    known_handle_reach: `${number(at('lines.handle_reach'), 1, 2)} m`,
    known_count: number(at('lines.count'), 1, 0),
    known_diameter: `${number(at('line_diameter'), 1000, 3)} mm`,
    known_linear_mass: `${number(at('lines.linear_mass'), 1000, 2)} g/m`,
    ...(Number.isFinite(at('lines.drag_coefficient')) && {
      known_line_drag: number(at('lines.drag_coefficient'), 1, 3),
    }),
    known_density: `${number(at('air.density'), 1, 4)} kg/m³`,
    known_temperature: `${number(at('air.temperature') - ICE_POINT, 1, 1)} °C`,
    known_humidity: `${number(at('air.humidity'), 100, 0)} %`,
    known_propeller_diameter: `${number(at('propeller_diameter'), 1000, 1)} mm`,
    ...dragOf(form, live),
  };
}

/**
 * What the model drags while it is timed, once the lap is flown with it: with trim and side force, which the lap's own balance leaves
 * out, so that the lap comes out as it was timed. Power goes with the cube of the speed.
 */
function dragOf(form: FirstDesignForm, live: Live): KnownLap {
  const at = (path: string): number => numberAt(live, path);
  const area = at('engine.drag_area_then');
  const typed = readEntry('lap_time', form.lap_time);
  if (!Number.isFinite(area) || !typed.ok) return {};
  const late = at('flight.lap_time') / typed.si!;
  const pressure = 0.5 * at('air.density') * at('engine.lap_speed') ** 2;
  const missing = Number.isFinite(late) ? ((late ** 3 - 1) * at('engine.lap_thrust')) / pressure : 0;
  return {
    known_drag_area: `${((area + missing) * 1e4).toFixed(2)} cm²`,
    known_induced_area: `${(at('engine.induced_area_then') * 100).toFixed(2)} dm²`,
  };
}

/** Whether the lap that was timed comes out as it was typed. */
export function flownAgain(form: FirstDesignForm, live: Live): boolean {
  const typed = readEntry('lap_time', form.lap_time);
  return typed.ok && Math.abs(numberAt(live, 'flight.lap_time') / typed.si! - 1) < 3e-4;
}

/** Shown on the sheet, with the numbers that stand in the engine. */
const TIMED_WITH =
  'Timed with: a lap of {engine.lap_time} at a weight of {engine.known_mass}, a drag area of {engine.known_drag_area} with the wing, {engine.known_count} lines of {engine.known_diameter} at a radius of {engine.known_radius}, air of {engine.known_density} at {engine.known_temperature}, a propeller of {engine.known_propeller_diameter}. These numbers stand in the engine and stay while the design changes, so that more drag makes a slower lap; type others there only when a lap is timed anew.';
