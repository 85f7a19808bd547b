import type { Theory } from '../block';

export const shutoffTheory: Theory = {
  equations: [
    {
      title: 'Pull of the cable',
      text: 's(β) = √(a_s² + g² − 2 a_s g cos(ψ + β)) − c_s\ng² = a_s² + c_s² − 2 a_s c_s cos ν_s',
      doc: 'β turn of the bellcrank from square toward down; g, ψ distance from the pivot to where the cable is led on, and its angle to the arm.',
      source: 'Law of cosines.',
    },
    {
      title: 'Trip',
      text: 's(β_s) = s_0 + s_t,  δ_s = −δ(β_s)\nΔδ_1 = δ_s − δ_2,  Δδ_2 = δ_d − δ_s',
      doc: 'δ(β) elevator by the linkage; δ_2 the most down used in flight, δ_d full down.',
      source: 'Geometry.',
    },
    {
      title: 'Force at the trip',
      text: 'F_a = [T_1 (a_d − f_p) − (|H| + M_f) dδ/dβ]/a_c\nT_s = [F_s a_c + (|H| + M_f) dδ/dβ]/(a_d − f_p)',
      doc: 'a_d, a_c lever arms of down line and cable about the pivot, H hinge moment of that elevator at the speed of level flight, before the model has turned after it; where the air presses the elevator down already it counts as nothing.',
      source: 'Derivation: moments about the pivot, the up line just slack.',
    },
  ],
  notModelled: [
    'Give and friction of the cable and its guides, and of the valve under vibration.',
    'Fuel that is left between shutoff and engine, and how long it runs on.',
    'Shutoffs by timer or by a third line.',
  ],
};
