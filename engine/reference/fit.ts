import type { Chapter } from './chapter';

/** How a log of flown laps is compared with the model, and what the numbers of a fit mean. */
export const fitChapter: Chapter = {
  id: 'fit',
  group: 'Reading this',
  title: 'Fit to flown laps',
  pieces: [
    {
      kind: 'text',
      text: 'A log holds what was timed, pulled and read on flights. A fit looks for the factors of the design, such as drag and power, for which the model comes nearest to all of it at once. Each flight is flown by the design as it stands with what the log says of the day; a blank is not measured, or as the design has it.',
    },
    {
      kind: 'text',
      text: 'A flight of a variant is flown with what that variant sets; one of a variant that the design no longer has is left out. The picture of the log stands each measured number beside what the design as it stands would have done: a fit moves the dashes. What a fit has put into the design stands in the log with its day.',
    },
    {
      kind: 'text',
      text: 'The lap timer takes the difference of two moments, by the clock of the page where it agrees with the clock of the day within 0.05 s, else by the clock of the day, which goes on while a phone sleeps. What mends what was seen in the air is common practice, no source; what it does to the numbers is computed by the model of this design, with one thing changed.',
    },
    {
      kind: 'text',
      text: 'The day card flies the design as it stands in the air of the day; pieces that it lacks are added beside it as a study would add them. Least and greatest pull are those in gusts, a gust taken to last the lap. Of the tip weights and leadout holes on hand it takes the one that laps fastest while that pull stays over the floor and under the pull test; what laps less than 0.01 s faster is no reason to change. A band of wind is flown at its upper end. An axle stays where the ground would have to drag 1.5 times as hard to tip the model (common practice, no source).',
    },
    { kind: 'heading', id: 'fit.equations', text: 'Equations' },
    {
      kind: 'equation',
      title: 'Time of a lap',
      lines: ['t = T/n,  σ_t = σ_T/n'],
      doc: 'T time of n laps, σ_T measuring error of a stopped time: ten laps are ten times as sure as one.',
      source: 'Definition; 0.05 s by hand is common practice, no source.',
    },
    {
      kind: 'equation',
      title: 'Least squares',
      lines: ['minimise Σ r_i²,  r_i = (predicted_i − measured_i)/σ_i'],
      doc: 'Over the factors, within the range of a field or the ends of a slide. σ_i the measuring error that the log states: one standard deviation. Gauss–Newton, damped where a step fails.',
      source:
        'K. Levenberg, Quart. Appl. Math. 2 (1944) 164; D. W. Marquardt, J. SIAM 11 (1963) 431 (both from memory).',
    },
    {
      kind: 'equation',
      title: 'Standard errors and correlation',
      lines: [
        'C = s² (JᵀJ)⁻¹,  J_ij = ∂r_i/∂p_j',
        'u_j = √C_jj,  ρ_jk = C_jk/(u_j u_k)',
        's² = Σ r_i²/(n − m) by the scatter, s² = 1 by the stated errors',
      ],
      doc: 'n measured numbers, m directions that they tell apart. Two factors with ρ near 1 or −1 go together: each may be far off as long as the other makes up for it, though what both predict may be good.',
      source: 'JCGM 100:2008, H.3; W. H. Press and others, Numerical Recipes, section 15.4 (from memory).',
    },
    {
      kind: 'equation',
      title: 'What the laps do not tell',
      lines: ['J = U Σ Vᵀ'],
      doc: 'Columns of J brought to length one. A direction of V whose singular value is less than a millionth of the greatest, or along which the standard error by the stated errors would be larger than a factor itself, counts as one that the laps do not see: the factors in it are not determined and are given no value.',
      source: 'G. H. Golub and C. F. Van Loan, Matrix Computations, section 5.5 (from memory).',
    },
    {
      kind: 'text',
      text: 'A flight for which the model has no answer is left out and named. A fit corrects the factors that it is given and nothing else: an error of the log, or of another part of the design, goes into them too. A factor far from 1 asks for a look at the design, not for trust in the model. The electric motor has no power factor: fit its speed per volt or the voltage of its pack.',
    },
    {
      kind: 'text',
      text: 'The pull on a spring scale is that of the moment; in wind it swings around the lap. A fit says nothing of safety: the pull test by the current rule book comes before each session, whatever the model says.',
    },
  ],
};
