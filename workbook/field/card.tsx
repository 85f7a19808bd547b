import { type DayCard, formatQuantity, type UnitSet } from '../../engine/index';
import { DayRing } from './ring';
import { bandWords, bearingWords, lapsWords, pullWords, setUpWords, stopWords, wheelWords, windWords } from './words';

/** So many stops stand on the first screen; all of them stand below it and on paper. */
const FIRST = 3;

/** The answer for the field on one screen of a phone. */
export function DayAnswerCard({ card, tested, units }: { card: DayCard; tested: boolean; units: UnitSet }) {
  const rows = [
    ['least', Math.min(card.least, Number.isNaN(card.leastInGust) ? card.least : card.leastInGust)],
    ['greatest', card.greatest],
    ['floor', card.floor],
    ['pull test', card.testLoad],
  ] as const;
  const stops = stopWords(card, tested);
  return (
    <section class="day-answer" aria-label="Day card">
      <table>
        <caption class="unseen">Pull around the lap, in gusts: newtons, pounds, times the weight</caption>
        <tbody>
          {rows.map(([title, pull]) => (
            <tr key={title}>
              <th scope="row">{title}</th>
              {pullWords(pull, card.weight).map((text, k) => (
                <td key={k}>{text}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <div class="day-places">
        <DayRing card={card} />
        <ul>
          <li>Wind {windWords(card.form.wind, units)}</li>
          <li>○ upwind {bearingWords(card.form.from)}</li>
          <li>R release {bearingWords(card.release)}</li>
          <li>S shut off {bearingWords(card.shutOff)}</li>
          <li>P pit {bearingWords(card.form.pit)}</li>
          <li>Lap {Number.isNaN(card.lapTime) ? '–' : formatQuantity(card.lapTime, 's')}</li>
        </ul>
      </div>
      <p>
        <strong>Use </strong>
        {card.setUp ? setUpWords(card.setUp, units) : 'nothing on hand: stop'}
      </p>
      <ul class="day-bands">
        {bandWords(card, units).map((band) => (
          <li key={band}>{band}</li>
        ))}
      </ul>
      <p>{wheelWords(card, units)}</p>
      <p>{lapsWords(card)}</p>
      <ul class="day-stops">
        {stops.slice(0, FIRST).map((stop) => (
          <li key={stop}>
            <strong>Stop</strong>
            {stop}
          </li>
        ))}
      </ul>
      <ul class="day-stops more">
        {stops.slice(FIRST).map((stop) => (
          <li key={stop}>
            <strong>Stop</strong>
            {stop}
          </li>
        ))}
        <li>
          Pull-test the whole system before the first flight, and after any crash or repair. See that up is up, lines
          without kinks, the circle clear of people and power lines. Eyes and hearing protected.
        </li>
        <li>An estimate: the rule book, the club’s safety officer and the field decide.</li>
      </ul>
    </section>
  );
}
