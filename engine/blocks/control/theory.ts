import { FLAT_PLATE_SECTION_SLOPE } from '../../physics/index';
import type { Theory } from '../block';

export const controlTheory: Theory = {
  equations: [
    {
      title: 'Handle and lines',
      text: 'b_h sin κ = [d_down(β) − d_up(β)] − [d_down(0) − d_up(0)] + λ',
      doc: 'κ tilt of the handle, d inside lengths of the leadouts from guide to bellcrank. The lines keep their length and lie parallel; the model follows both. The overhang of the handle moves both alike.',
      source: 'Geometry.',
    },
    {
      title: 'Bellcrank',
      text: 'P = O + R(β) p,  d = |P − G|,  a = |P′·(P − G)|/d',
      doc: 'P holes, G guides, O pivot; a lever arms of the leadouts about the pivot.',
      source: 'Geometry: rotation.',
    },
    {
      title: 'Pushrod and horn',
      text: 'cos(ζ − φ) = (h² + D² − ρ²)/(2 h D),  ρ² = l_p² − Δy²\ndδ/dβ = a_p/a_h',
      doc: 'D, φ distance and direction from the hinge to the pushrod’s hole of the bellcrank in the plane of the horn, Δy beside it, ζ direction of the horn; a_p, a_h lever arms of the pushrod about pivot and hinge. Bellcrank and horn turn in planes of their own. Exact; where the circles do not meet it does not close, where a lever arm vanishes it locks.',
      source: 'Derivation: intersection of two circles.',
    },
    {
      title: 'Hinge moment',
      text: 'H = q E_e² S_t c_t [b_1 (C_L/a_0 + τ_e δ) − b_2 δ]\nC_L = C_L0 − a_t τ_e (δ − δ_0)',
      doc: `q dynamic pressure, C_L0 and δ_0 tail lift coefficient and elevator of level flight, a_0 = ${FLAT_PLATE_SECTION_SLOPE} per radian. The elevator has just moved and the model has not turned after it yet; later the moment is smaller.`,
      source: 'Definition of the coefficients; the section’s incidence by its lift law.',
    },
    {
      title: 'Its coefficients',
      text: 'b_1 = −[(π − θ) (cos θ − ½) + sin θ (1 − ½ cos θ)]/E_e²\nb_2 = −[(π − θ)² (cos θ − ½) + (π − θ) sin θ + ½ sin² θ]/(π E_e²),  cos θ = 2 E_e − 1',
      doc: 'Per radian, plain flap without gap. Measured moments are a fifth or more smaller (from memory).',
      source:
        'Thin-aerofoil theory (H. Glauert, The Elements of Aerofoil and Airscrew Theory; A.R.C. R. & M. 1095), integrated here from its pressures.',
    },
    {
      title: 'Pull that holds it',
      text: 'T_n = (|H| + M_f) (dδ/dβ)/(a − f_p),  f_p = μ_p ½ d_p\nΔT = [2 (M ± f_p T_1) + T_1 (a_d − a_u)]/(a_u + a_d),  M = (H ± M_f) dδ/dβ',
      doc: 'a lever arm of the line that works, f_p friction arm of the pivot. At T_n all pull is in that line and the other is just slack.',
      source: 'Derivation: moments about the pivot.',
    },
    {
      title: 'Elevator needed',
      text: 'δ_e as level flight has it; at V_l from the same balance of yaw, roll, pitch and lift, engine stopped',
      source: 'That of level flight: tail volume, static margin, curved path.',
    },
  ],
  notModelled: [
    'Give of lines, leadouts, pushrod, horn and bellcrank; play in their holes; lines of unlike stretch.',
    'Friction of the leadouts in their guides; the weight of elevator and pushrod; mass balance.',
    'Area of the elevator ahead of its hinge: type its hinge moment coefficients. Flaps on the wing that move with the elevator.',
    'A line that sags before it is wholly slack: control goes soft before the share of the pull comes to 100 %.',
    'Ground effect, flare and propeller wash on the tail.',
  ],
};
