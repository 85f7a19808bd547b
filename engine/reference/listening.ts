import { FARTHEST_OFF, LAP_ERROR, LAPS_HEARD, SHORTEST_SOUND, TURNS_ERROR } from '../physics/index';
import { formatQuantity } from '../units/index';
import type { Chapter } from './chapter';

/** How engine speed and laps are told from the sound of a flight. */
export function listeningChapter(): Chapter {
  const off = formatQuantity(FARTHEST_OFF - 1, '%');
  const turns = formatQuantity(TURNS_ERROR, '%');
  const shortest = formatQuantity(SHORTEST_SOUND, 's');
  const lap = formatQuantity(LAP_ERROR, 's');
  const laps = `${formatQuantity(LAPS_HEARD.shortest, 's')} to ${formatQuantity(LAPS_HEARD.longest, 's')}`;
  return {
    id: 'listening',
    group: 'Reading this',
    title: 'Listening to a flight',
    pieces: [
      {
        kind: 'text',
        text: 'An engine gives off a tone that repeats itself with every firing, a propeller one that repeats itself with every blade: their spectrum is a row of lines at once, twice, three times the frequency of that. From outside the circle it is heard higher while the model comes and lower while it goes, once a lap. So a microphone tells turns and laps; from the middle of the circle the pitch stays, and it tells the turns alone.',
      },
      { kind: 'heading', id: 'listening.equations', text: 'Equations' },
      {
        kind: 'equation',
        title: 'Turns from the tone',
        lines: ['n = f₀/z'],
        doc: 'f₀ frequency at which the sound repeats itself, z how often it does so in a turn: 1 for a two-stroke, ½ for a four-stroke, the number of blades for a motor.',
        source: 'Definition.',
      },
      {
        kind: 'equation',
        title: 'Pitch of a short piece',
        lines: ['S(f) = (1/H) Σ_h [L(h f) − ½ L((h − a) f) − ½ L((h + a) f)],  h = 1 … H', 'L = ln(1 + P/P₀)'],
        doc: 'P power of a line of the spectrum under a Hann window, P₀ what is there between the tones, so that wind, which is loud where it is low, counts for no more than hiss; a = 0.32. The pitch is followed along the pieces where S is greatest less a cost of change.',
        source:
          'Sum over harmonics: D. J. Hermes, J. Acoust. Soc. Am. 83 (1988) 257–264; path: R. Bellman, Dynamic Programming (1957) (both from memory). What is subtracted: derivation.',
      },
      {
        kind: 'equation',
        title: 'Pitch of a model on its circle',
        lines: [
          'f/f₀ = 1/(1 + v_r/c),  v_r/c = β sin θ/s,  s = √(1 + q² − 2 q cos θ)',
          '2π (t − t₀)/T = θ + (β/q) (s − 1 + q)',
        ],
        doc: 'T lap time, t₀ when a closest point is heard, θ where the model was on its circle when it gave the sound off (0 there), β = v/c speed over that of sound, q = R/D radius over the distance from the middle of the circle to the ear, v_r speed away from the ear. The second line is the way of the sound: distance over c. Circle and ear lie in one plane, the air rests. Speed and radius follow: v = β c, R = v T/2π.',
        source:
          'Doppler’s principle for a moving source: P. M. Morse and K. U. Ingard, Theoretical Acoustics (1968), chapter 11 (from memory); for the circle: derivation.',
      },
      {
        kind: 'equation',
        title: 'Laps',
        lines: ['T_k = t_(k+1) − t_k'],
        doc: 'T, t₀, f₀, β, q and how lap and pitch drift are fitted by least squares to all pitches; then each closest point by itself, as the shape of that swing which may come earlier or later. The sound of each has the same way, so the difference is the lap.',
        source: 'Least squares as under “Fit to flown laps”; the difference: derivation.',
      },
      {
        kind: 'equation',
        title: 'Tone of a lap',
        lines: ['f₀ = (1/T) ∫ f dt over a whole lap'],
        doc: 'As many periods come in during a lap as are given off, for the way is as long at its end as at its beginning: neither speed of sound nor where the ear is enters.',
        source: 'Derivation.',
      },
      {
        kind: 'equation',
        title: 'Uncertainty',
        lines: ['u(t_k) = σ √(m/Σ (g_i − ḡ)²),  u(T_k) = √(u(t_k)² + u(t_(k+1))²)', 'u(f₀) = f₀ σ √(m/N)'],
        doc: 'σ scatter of ln f about the fit, by its median; g_i slope of ln f by t_k at piece i; N pieces in the laps, of which m tell as much as one because they overlap. One standard deviation, from how the pitches scatter: what is the same in all of them isn’t in it.',
        source: 'JCGM 100:2008, H.3; overlap: derivation.',
      },
      { kind: 'heading', id: 'listening.limits', text: 'When it can’t tell' },
      {
        kind: 'list',
        items: [
          `Shorter than ${shortest}, or laps that don’t last ${laps}.`,
          `The tone is looked for within ${off} of the rpm that is expected, up and down by a factor: that is less than an octave, and a tone an octave away is never taken for it. Where every second or third line alone is loud, or lines halfway are nearly as loud, the rpm may be another multiple, and none is told.`,
          'No tone stands out of the noise, or its pitch doesn’t move as that of a model on its circle: figures, climbs, two models as loud as each other.',
          `The rpm is told where its standard deviation is under ${turns}, a lap as sure where it is under ${lap}; and where the mean over whole laps and the fit agree.`,
          'The model passes so near that the pitch drops while a single piece lasts: stand farther away.',
        ],
      },
      {
        kind: 'text',
        text: 'Not modelled: wind, which carries the sound and makes the model faster on one side; echoes from walls; the height of the model over the ear. They bend the swing, and with it speed and radius; laps, as far as they are alike, and turns stay.',
      },
      {
        kind: 'text',
        text: 'Tried on flights made by computation, with the way of the sound in full, wind noise, other models and a microphone that is too loud: of 200 flights fewer than one in a hundred answers was off by more than 0.5 % in rpm or 0.02 s in a lap. Real flights differ in more than that: compare with a tachometer and a stopwatch before you trust it.',
      },
    ],
  };
}
