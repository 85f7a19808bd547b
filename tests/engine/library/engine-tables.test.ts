import { describe, expect, it } from 'vitest';
import { electric } from '../../../engine/blocks/engines/electric';
import { bladeShapes, FUEL_KINDS } from '../../../engine/library/index';
import { engines, readEngines } from '../../../engine/library/tables/engines';
import { motors, readMotors } from '../../../engine/library/tables/motors';
import { packs } from '../../../engine/library/tables/packs';
import { propellers, readPropellers } from '../../../engine/library/tables/propellers';
import { twoStrokeTorque } from '../../../engine/physics/index';

describe('engines by size', () => {
  it.each(engines.rows.map((row) => [row.name, row.values] as const))('%s has peaks that go together', (_, values) => {
    const points = {
      peakTorque: values.peak_torque!,
      torqueSpeed: values.torque_speed!,
      peakPower: values.peak_power!,
      powerSpeed: values.power_speed!,
    };
    expect(twoStrokeTorque(points)(points.powerSpeed) * points.powerSpeed).toBeCloseTo(points.peakPower, 6);
  });
  it('are glow and diesel', () => {
    expect(new Set(engines.rows.map((row) => FUEL_KINDS[row.values.fuel!]))).toEqual(new Set(FUEL_KINDS));
  });
  it('refuse a fuel that no block knows, and a number without its unit', () => {
    const heading = 'name,title,fuel,displacement,peak_torque,torque_speed,peak_power,power_speed,mass,memory,source\n';
    const row = (fuel: string, power: string): string =>
      `${heading}x,X,${fuel},1 cm³,0.1 N·m,9000 rpm,${power},14000 rpm,80 g,yes,S\n`;
    expect(() => readEngines('engines.csv', row('petrol', '100 W'))).toThrow(
      /^engines\.csv: line 2: fuel is "petrol"; it must be /,
    );
    expect(() => readEngines('engines.csv', row('glow', '100'))).toThrow(
      /^engines\.csv: line 2: peak_power is "100", which has no unit; write /,
    );
  });
});

describe('motors by size', () => {
  it.each(motors.rows.map((row) => [row.name, row.values] as const))('%s is a motor that could be', (_, values) => {
    // Idle losses at 11 V below a fifth of what it gives at its best current.
    const idle = values.idle_current! * 11;
    const best = Math.sqrt((values.idle_current! * 11) / values.resistance!);
    expect(best).toBeGreaterThan(3 * values.idle_current!);
    expect(idle / (11 * best)).toBeLessThan(0.2);
  });
  it('refuse a blank', () => {
    const text = 'name,title,speed_per_volt,resistance,idle_current,mass,memory,source\nx,X,,60 mΩ,1 A,90 g,yes,S\n';
    expect(() => readMotors('motors.csv', text)).toThrow('motors.csv: line 2: speed_per_volt is blank');
  });
});

describe('propellers by size', () => {
  it.each(propellers.rows.map((row) => [row.title, row.values] as const))(
    '%s is marked as it says',
    (title, values) => {
      const [, diameter, pitch, shape] = /^(\d+)×(\d+), (\w+)$/.exec(title)!;
      expect(values.diameter! / 0.0254).toBeCloseTo(Number(diameter), 9);
      expect(values.pitch! / 0.0254).toBeCloseTo(Number(pitch), 9);
      expect(bladeShapes[values.shape!]!.name).toBe(shape);
    },
  );
  it('refuse a blade shape that is not there', () => {
    const text = 'name,title,diameter,pitch,shape,memory,source\nx,X,9 in,6 in,round,yes,S\n';
    expect(() => readPropellers('propellers.csv', text)).toThrow(/^propellers\.csv: line 2: shape is "round"/);
  });
});

describe('packs by cells and capacity', () => {
  it('give an electric motor what is typed of its pack, and no field of it otherwise', () => {
    const fields = Object.keys(electric.fields);
    const given = Object.keys(packs.columns).filter((name) => fields.includes(name));
    expect(given).toEqual(['capacity', 'voltage', 'pack_resistance']);
  });
});
