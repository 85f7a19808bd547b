import { type FitAnswer, type FittedNumber, formatNumber, formatQuantity, type LogCell } from '../../../engine/index';
import { useSheet } from '../../store/context';

/** The bars reach this many measuring errors to either side at least. */
const LEAST_REACH = 2;

/** What was measured against the model with the factors found, reading by reading. */
export function FitResiduals({ answer, log, title }: { answer: FitAnswer; log: LogCell; title: string }) {
  const sheet = useSheet();
  const offs = answer.numbers.map(offOf);
  const reach = Math.max(LEAST_REACH, ...offs.map(Math.abs));
  const info = (path: string) => sheet.name(path) ?? { title: path, unit: '', suffix: '' };
  const show = ({ path }: FittedNumber, value: number, difference = false): string => {
    const { unit, suffix } = info(path);
    return formatQuantity(value, unit, difference ? { suffix, difference, sign: true } : { suffix, significant: 4 });
  };
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keys.
    <section class="log-room" tabIndex={0} aria-label={`Readings against ${title}`}>
      <table class="fit-readings">
        <caption>Readings against the fit, off by so many measuring errors</caption>
        <thead>
          <tr>
            <th scope="col">Flight</th>
            <th scope="col" class="fit-word">
              Reading
            </th>
            <th scope="col">Measured</th>
            <th scope="col">Design</th>
            <th scope="col">Fitted</th>
            <th scope="col">Measured less fitted</th>
            <th scope="col">In measuring errors</th>
          </tr>
        </thead>
        <tbody>
          {answer.numbers.map((each, k) => (
            <tr key={`${each.row} ${each.path}`}>
              <th scope="row">{log.rows[each.row]?.label || `row ${each.row + 1}`}</th>
              <td class="fit-word">{info(each.path).title}</td>
              <td>{show(each, each.measured)}</td>
              <td>{show(each, each.before)}</td>
              <td>{show(each, each.fitted)}</td>
              <td>{show(each, each.measured - each.fitted, true)}</td>
              <td class="fit-off">
                {formatNumber(offs[k]!, 2)}
                <Bar off={offs[k]!} reach={reach} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

const offOf = ({ measured, fitted, error }: FittedNumber): number => (measured - fitted) / error;

const WIDTH = 100;

/** To the right where more was measured than the model says; the ticks stand one measuring error to either side. */
function Bar({ off, reach }: { off: number; reach: number }) {
  const middle = WIDTH / 2;
  const one = middle / reach;
  const length = Math.abs(off) * one;
  return (
    <svg class="fit-bar" viewBox={`0 0 ${WIDTH} 12`} aria-hidden="true">
      <path class="fit-ticks" d={`M${middle - one} 1V11M${middle + one} 1V11`} />
      <rect class="fit-length" x={off < 0 ? middle - length : middle} y="3" width={length} height="6" />
      <path class="fit-middle" d={`M${middle} 0V12`} />
    </svg>
  );
}
