import { formatQuantity, type HeardFlight } from '../../engine/index';
import { shaftSpeedOf } from './words';

/** The laps that were heard, one by one. */
export function HeardLaps({ laps }: Pick<HeardFlight, 'laps'>) {
  if (laps.length === 0) return null;
  return (
    <table class="heard-laps">
      <thead>
        <tr>
          <th scope="col">Lap</th>
          <th scope="col">from, s</th>
          <th scope="col">time, s</th>
          <th scope="col">±, s</th>
          <th scope="col">rpm</th>
        </tr>
      </thead>
      <tbody>
        {laps.map(({ from, time, turns, sure }, k) => (
          <tr key={from}>
            <th scope="row">{k + 1}</th>
            <td>{from.toFixed(1)}</td>
            <td>{time.value.toFixed(2)}</td>
            <td>
              {time.error.toFixed(3)}
              {!sure && ', unsure'}
            </td>
            <td>{formatQuantity(shaftSpeedOf(turns), 'rpm', { significant: 4 }).replace(/\u00a0rpm$/, '')}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
