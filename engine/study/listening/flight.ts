import {
  dryAirDensity,
  type Heard,
  SEA_LEVEL_PRESSURE,
  SEA_LEVEL_TEMPERATURE,
  soundSpeed,
  type Told,
} from '../../physics/index';
import type { HeardFlight, ListeningQuestion } from './told';

/**
 * v = β c,  R = v T/2π: speed and radius from the swing of the pitch. Standard errors of β and T are independent. Derivation: the circle is flown
 * once a lap; γ, pressure and density give c.
 */
export function heardFlight(heard: Heard, { air }: Pick<ListeningQuestion, 'air'>): HeardFlight {
  const { mach, lap } = heard;
  if (!mach || typeof lap === 'string') return heard;
  const { pressure, density } = air ?? {
    pressure: SEA_LEVEL_PRESSURE,
    density: dryAirDensity(SEA_LEVEL_PRESSURE, SEA_LEVEL_TEMPERATURE),
  };
  const sound = soundSpeed(pressure, density);
  const speed: Told = { value: mach.value * sound, error: mach.error * sound };
  const value = (speed.value * lap.value) / (2 * Math.PI);
  const radius = { value, error: value * Math.hypot(mach.error / mach.value, lap.error / lap.value) };
  return { ...heard, speed, radius };
}
