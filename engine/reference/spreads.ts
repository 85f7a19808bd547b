import { ESTIMATE_SPREAD, SCALE_SPREAD, STATION_SPREAD } from '../physics/index';
import { formatQuantity } from '../units/index';
import type { Chapter } from './chapter';

/** How a spread is computed, and how far to trust its numbers. */
export function spreadsChapter(): Chapter {
  const share = formatQuantity(ESTIMATE_SPREAD, '%');
  const scale = formatQuantity(SCALE_SPREAD, 'g');
  const station = formatQuantity(STATION_SPREAD, 'mm');
  return {
    id: 'spreads',
    group: 'Reading this',
    title: 'Tolerances',
    pieces: [
      {
        kind: 'text',
        text: 'Tolerances compute many designs whose numbers differ at random from what is typed, each by its own kind and amount, and tell what becomes of the results. Only what is cut from one material, and what has a correlation typed, is off together: all else is independent. The same seed draws the same designs again, whoever computes them.',
      },
      {
        kind: 'table',
        title: 'How a number may differ',
        columns: ['kind', 'what is typed', 'standard deviation'],
        rows: [
          [
            'normal',
            'the standard deviation σ; about two of three designs lie within it, 95 of 100 within twice it',
            'σ',
          ],
          ['uniform', 'as much below and above: anywhere between the ends, a and b', '(b − a)/√12'],
          [
            'triangular',
            'as much below and above: most likely as typed (m), never beyond the ends',
            '√(a² + b² + m² − a b − a m − b m)/√18',
          ],
        ],
      },
      {
        kind: 'list',
        items: [
          `The uncertainties of the parts table are standard deviations of normal tolerances, of the mass and of each station along x, y and z. Where none is typed: ${share} of an estimate, ${scale} for a mass from the scale, ${station} for a station (common practice, no source).`,
          'A part is off by its mass and stations whatever gives them: a weighed mass, a material, a formula. In the shares its three stations count together as its place.',
          'The weight of all that is cut from one material or stack is off together, by one draw, for its density differs once and not part by part; a cut-out is off the other way. A part that was weighed, or has a tolerance of its own, is off by itself; where the density of the material has a row of its own, that row says it all.',
          'A correlation of two rows, from −1 to 1, makes them off together; what is correlated has one share of the variance. Of kinds other than normal it is that of the normal numbers behind them, and a little less between the numbers themselves.',
          'A formula that differs by itself takes what it gives for the present design as its middle.',
          'How far a temperature is off is written in K.',
          'A design that has no answer is counted with its reason; mean, percentiles and shares are those of the others, and of few designs they say little.',
        ],
      },
      { kind: 'heading', id: 'spreads.equations', text: 'Equations' },
      {
        kind: 'equation',
        title: 'Designs',
        lines: ['x_ij = F_i⁻¹((π_i(j) − 1 + u_ij)/N),  j = 1 … N'],
        doc: 'Latin hypercube: along each direction i every one of N strata of equal probability holds one design, at random within it (0 < u < 1) and in random order (π_i, a permutation). F_i⁻¹ is the value below which a share of all lies.',
        source: 'M. D. McKay, R. J. Beckman, W. J. Conover, Technometrics 21 (1979) 239–245.',
      },
      {
        kind: 'equation',
        title: 'What is correlated',
        lines: ['z = Φ⁻¹(u),  z′ = L z,  u′ = Φ(z′),  L Lᵀ = C'],
        doc: 'C the correlations typed, 1 on its diagonal and 0 elsewhere; L its lower triangle (Cholesky), u the shares drawn. JCGM 101:2008, 9.4 is met.',
        source: 'R. L. Iman and W. J. Conover, Communications in Statistics B11 (1982) 311–334, for the way.',
      },
      {
        kind: 'equation',
        title: 'Mean, deviation and percentiles',
        lines: ['m = (1/n) Σ y_j', 's² = Σ (y_j − m)²/(n − 1)', 'y_p: at place 1 + p (n − 1) of the designs in order'],
        doc: 'Of the n designs of N that have an answer; percentiles straight between neighbours.',
        source:
          'Definitions; percentiles by definition 7 of R. J. Hyndman and Y. Fan, The American Statistician 50 (1996) 361–365.',
      },
      {
        kind: 'equation',
        title: 'How far chance may move them',
        lines: ['s/√n', 's/√(2 (n − 1))', '√(p (1 − p)/n)/f(y_p)'],
        doc: 'Standard errors of the mean, of the deviation of a result that is about normal, and of a percentile (f: density of the results there), for n designs at random. Near a normal result a 5 % or 95 % percentile is good to 2.1 s/√n: 0.07 s of 1000 designs. A Latin hypercube does better for the mean of a result that is nearly a sum of what differs, and hardly worse elsewhere.',
        source:
          'Derivation: the mean has variance σ²/n; s² of a normal has variance 2σ⁴/(n − 1); the number of designs below y_p is binomial, n p (1 − p), and a step in y moves it by n f. For the hypercube: A. B. Owen, SIAM Journal on Numerical Analysis 34 (1997) 1884–1910: its variance is at most n/(n − 1) of that at random (recalled, not looked up).',
      },
      {
        kind: 'equation',
        title: 'Shares of the variance',
        lines: ['S_i = (1/n) Σ_j (y_B,j − y_0) (y_ABi,j − y_A,j)/V', 'S_Ti = (1/2n) Σ_j (y_A,j − y_ABi,j)²/V'],
        doc: 'A and B: the two sets of designs of one hypercube of 2 k directions; AB_i: the designs of A with thing i as in B; y_0 and V: mean and variance of A and B together. S_i (alone) is what would go if i were known exactly; S_Ti (with the others) is what would be left if everything else were. They differ where things work together. The error told with each is the standard deviation of its terms over √n. A share that is less than twice its error may be nothing, and may come out under 0.',
        source:
          'A. Saltelli et al., Computer Physics Communications 181 (2010) 259–270, table 2 (b) and (f), the latter by M. J. W. Jansen, Computer Physics Communications 117 (1999) 35–43. Things that go together (the stations of a part) are exchanged together.',
      },
      {
        kind: 'text',
        text: 'What else is off together in the shop (all weights from a scale that reads too high) is not covered: make it one variable that the others follow, and let that differ.',
      },
    ],
  };
}
