import type { Theory } from '../block';

export const wingTheory: Theory = {
  equations: [
    {
      title: 'Area and mean chord of two panels',
      text: 'S_k = s (c_r + c_t)/2,  c̄_k = ⅔ c_r (1 + λ + λ²)/(1 + λ),  ȳ_k = (s/3)(1 + 2λ)/(1 + λ)\nS = Σ S_k,  A = b²/S\nc̄ = Σ S_k c̄_k/S,  its leading edge at Σ S_k ȳ_k tan Λ_k/S,  x_¼ a quarter of c̄ behind it',
      doc: 's panel span, c_t its tip chord, λ = c_t/c_r, Λ sweep of its leading edge, tip aft positive.',
      source:
        'One panel: D. P. Raymer, Aircraft Design: A Conceptual Approach. Two panels: derivation, mean weighted by area.',
    },
    {
      title: 'Section',
      text: 'c_d0 = c_d (section) · factor for low Reynolds number\nC_L,max = 0.9 · c_l,max (section) · factor for low Reynolds number',
      doc: 'Section values stand straight between the rows of its family by thickness; beyond the first and last row that row is held.',
      source:
        'Rows of the section table with their sources; 0.9 from D. P. Raymer, Aircraft Design: A Conceptual Approach, ch. 12 (from memory); the factors are estimates.',
    },
    {
      title: 'Lift slope',
      text: 'a = 2π A/(2 + √(4 + (2π A/a_0)² (1 + tan² Λ_½)))',
      doc: 'Λ_½ sweep of the half-chord line, weighted by area. Without sweep and with a_0 = 2π it is Helmbold’s form. Low Mach number.',
      source: 'USAF DATCOM 4.1.3.2 after Polhamus (from memory); H. B. Helmbold (1942).',
    },
    {
      title: 'Lifting line in circular flight',
      text: 'Σ A_n sin nθ (sin θ + n μ) = μ α (1 + y/R) sin θ,  μ = c a_0/(4 b)\ny = y_m − (b/2) cos θ\ny_L(R) = ∫ y Γ (1 + y/R) dy / ∫ Γ (1 + y/R) dy ≈ y_L + κ/R',
      doc: 'Odd and even n, since the panels differ and the outboard wing flies faster; Γ circulation, R radius to the centreline. Twenty terms. The wake is taken as straight; sweep is not seen.',
      source:
        'L. Prandtl’s theory with the series of H. Glauert, The Elements of Aerofoil and Airscrew Theory, ch. XI; the terms in 1/R: derivation from the same equation with the local speed.',
    },
    {
      title: 'Drag due to lift',
      text: 'C_D = c_d0 + k C_L²,  k = 1/(π A e)\n1/e = 1 + δ + π A k_v',
      doc: 'δ = Σ n (A_n/A_1)² over n > 1 from the lifting line; k_v = 0.0098 is the growth of section drag with lift.',
      source:
        'Lifting line as above; k_v from R. E. Sheldahl and P. C. Klimas, SAND80-2114 (1981), NACA 0012 at Re 3.6×10⁵.',
    },
    {
      title: 'Station of the profile drag',
      text: 'y_D(R) = ∫ y c (1 + y/R)² dy / ∫ c (1 + y/R)² dy ≈ y_D + κ_D/R',
      source: 'Derivation: drag in proportion to chord and the square of the local speed, expanded in y/R.',
    },
  ],
  notModelled: [
    'Twist, dihedral and flaps.',
    'Change of section drag with Reynolds number from tip to tip; one factor stands for a low Reynolds number.',
    'The stall itself: only the lift coefficient at which it comes.',
    'Propeller wash on the wing.',
  ],
};
