import type { Theory } from '../block';

export const foundCgTheory: Theory = {
  equations: [
    {
      title: 'On two fingertips',
      text: 'x = x_e + d',
      doc: 'd behind the leading edge, which stands at x_e where the fingers are.',
      source: 'Derivation: it tips about the line between the fingers.',
    },
    {
      title: 'On two or three scales',
      text: 'M = Σ R_i,  x = Σ R_i x_i/M,  y = Σ R_i y_i/M\ns_x² = Σ {[(x_i − x) s_R]² + (R_i s_i)²}/M²',
      doc: 'R_i what each reads, s_R and s_i the errors of a reading and of a place.',
      source: 'Derivation: forces and moments; errors by JCGM 100, eq. 10.',
    },
    {
      title: 'Hung by the leadouts',
      text: 'x = x_g − (y − y_g) tan φ,  s_x² = [(y − y_g) (1 + tan² φ) s_φ]² + s_i²',
      doc: 'x_g, y_g the guide, φ the droop of the nose. A free bellcrank pulls both leadouts alike, so that the pull goes through the middle between them, and the CG hangs below it.',
      source: 'Derivation: two forces in one line.',
    },
    {
      title: 'A scale under one tip',
      text: 'y = y_e + R_t (y_t − y_e)/M',
      doc: 'The model rests on an edge at y_e and on the scale at y_t.',
      source: 'Derivation: moments about the edge.',
    },
    {
      title: 'Several ways together',
      text: 'x = Σ (x_k/s_k²)/Σ (1/s_k²),  s² = 1/Σ (1/s_k²)',
      source: 'Least squares with independent errors (JCGM 100, H.3).',
    },
    {
      title: 'What explains the difference',
      text: 'm_x = M − M_T,  x_x = (M x − M_T x_T)/m_x',
      doc: 'Where the whole model was weighed. Else m_x = M_T (x − x_T)/(x_s − x) at the station x_s.',
      source: 'Derivation: moments.',
    },
  ],
  notModelled: [
    'A model that does not rest level: prop it up until the reference line is level, or its height counts too.',
    'Fuel that runs to one end of the tank while the model hangs: hang it dry.',
  ],
};
