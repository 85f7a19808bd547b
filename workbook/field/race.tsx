import { formatNumber, formatQuantity, type RaceCard, type UnitSet } from '../../engine/index';

/** "8:37.7" */
function raceClock(seconds: number): string {
  const tenths = Math.round(seconds * 10);
  return `${Math.floor(tenths / 600)}:${((tenths % 600) / 10).toFixed(1).padStart(4, '0')}`;
}

/** The race on one screen: laps, when to shut off, stops and what each does, and which needle. */
export function RaceAnswer({ race, units }: { race: RaceCard | undefined; units: UnitSet }) {
  if (!race) {
    return (
      <section class="day-answer" aria-label="Race card">
        <p>No race with stops for fuel: this model carries none, or a filling does not last a lap with its reserve.</p>
      </section>
    );
  }
  const fuel = (si: number): string => formatQuantity(si, units === 'metric' ? 'mL' : 'fl oz');
  const laps = (count: number): string => `${formatNumber(count, 3)} ${count === 1 ? 'lap' : 'laps'}`;
  const needle =
    race.bestNeedle >= 0.995
      ? 'fastest'
      : race.bestNeedle <= 0.005
        ? 'range'
        : `${Math.round(race.bestNeedle * 100)}\u00a0% to fastest`;
  const rows: readonly (readonly [string, string])[] = [
    ['Race', `${laps(race.laps)}, ${raceClock(race.time)}`],
    ['Lap', `${formatQuantity(race.lapTime, 's')}${race.timed ? ', timed today' : ', predicted'}`],
    ['Fuel a lap', `${fuel(race.fuelPerLap)}${race.measured ? ', measured today' : ', estimated'}`],
    ['Stops', formatNumber(race.stops)],
    ...(race.stops > 0
      ? ([
          ['Shut off', `at lap ${race.shutOffLap} of a tank`],
          ['Refuel', fuel(race.refuel)],
          ['Restart', formatQuantity(race.restart, 's')],
          ['Each stop', formatQuantity(race.pit, 's')],
        ] as const)
      : []),
    ['Reserve', laps(race.reserve)],
    ['Fast needle', raceClock(race.fastTime)],
    ['Range needle', raceClock(race.rangeTime)],
    [
      'Best needle',
      `${needle}: ${raceClock(race.bestTime)}, ${race.bestStops === 1 ? '1 stop' : `${formatNumber(race.bestStops)} stops`}`,
    ],
  ];
  return (
    <section class="day-answer" aria-label="Race card">
      <table class="race-table">
        <tbody>
          {rows.map(([title, text]) => (
            <tr key={title}>
              <th scope="row">{title}</th>
              <td>{text}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>
        <strong>Stop</strong> if a fuelling hand is near the propeller, or fuel has run over the model: methanol burns
        unseen.
      </p>
      <p class="more">
        Laps, stops and pit work by the current rule book. Lap time and fuel come from the flights of today in the log,
        where it has any.
      </p>
    </section>
  );
}
