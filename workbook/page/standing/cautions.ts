/** A caution and the results beside which it stands: a warning that stands everywhere is read nowhere. */
export interface Caution {
  /** Figures after which it stands in the list of key figures. */
  readonly figures: readonly string[];
  /** Roles of blocks below whose results it stands. */
  readonly blocks: readonly string[];
  /** Sentences; {path|unit} is the value there in that unit. What stands in square brackets falls away without a value. */
  readonly sentences: readonly string[];
}

export const cautions: readonly Caution[] = [
  {
    figures: [
      'flight.pull',
      'flight.pull_per_weight',
      'flight.pull_at_handle',
      'flight.pull_per_line',
      'flight.breaking_margin',
    ],
    blocks: ['flight'],
    sentences: [
      'Pull-test handle, lines, connectors, leadouts and bellcrank together, by the current rule book, before each session and after any crash or repair.[ The pull is estimated at {flight.pull|N} ({flight.pull|lbf}); the rule book sets the load of the test.]',
      'Keep the whole circle clear of people and of overhead power lines, and stop if there is lightning about.',
      'These figures are estimates: the rules, local codes and the club’s safety officer decide.',
    ],
  },
  {
    figures: [],
    blocks: ['flight'],
    sentences: [
      'Before every flight: safety strap on before the model is released, and up is up. A junior’s pull and dizziness have limits: stop if the lines pull more than the pilot holds with ease.',
    ],
  },
  {
    figures: ['strength.strength_over_test', 'strength.test_over_pull', 'strength.weakest_load'],
    blocks: ['strength'],
    sentences: [
      'Stop if either ratio is below 1. No computed strength replaces the pull test of the whole system (handle, lines, connectors, leadouts, bellcrank) by the current rule book, before each session and after any crash or repair: wear eye protection and stand clear of the lines while they are pulled.',
    ],
  },
  {
    figures: ['control.pull_margin', 'control.pull_share', 'control.margin', 'control.margin_landing'],
    blocks: ['control'],
    sentences: [
      'Before every flight see that up is up: tilt the handle back with the lines taut, and stop if the elevator does not rise. Stop if the linkage binds, slips or goes over centre, if a hinge, horn, clevis, keeper or screw is loose, or if a line or leadout is caught.',
      'Stop if the margin of the pull is below 1, or an elevator margin below 0. These figures are estimates: the rule book, club practice and the club’s safety officer decide.',
    ],
  },
  {
    figures: ['shutoff.used_margin', 'shutoff.stop_margin', 'shutoff.force_margin'],
    blocks: ['shutoff'],
    sentences: [
      'Stop if the margin beyond the most down used or that of the force is not above what play, stretch and wear take: an engine that shuts off low and inverted, or does not shut off, hurts. Try it on the ground with the lines pulled by a scale, engine running and the model held fast, before the first flight and after any change of the linkage; the rule book of the class says whether one is required.',
    ],
  },
  {
    figures: [],
    blocks: ['gear'],
    sentences: ['Look for cracks, bent wire and loose straps after every hard landing.'],
  },
  {
    figures: [],
    blocks: ['lines'],
    sentences: [
      'Stop if a line is kinked, nicked or rusted, or its end has slipped. A line that touches a power line kills: choose the field for a circle[ of {lines.guide_radius|m} radius], with the model and a margin beyond it.',
    ],
  },
  {
    figures: [],
    blocks: ['engine'],
    sentences: [
      'Hold the model fast for starting; keep hands, sleeves and onlookers out of the propeller’s plane; protect eyes and ears. Methanol burns with a flame that cannot be seen. Keep an electric motor unarmed until the model is held, and watch packs while they charge.',
    ],
  },
  {
    figures: [],
    blocks: ['parts'],
    sentences: [
      'Dust of wood, glass and carbon and the fumes of dope, glue and fuel harm the lungs: wear a mask and work in moving air. Wash after handling lead.',
    ],
  },
];

/** Cautions that stand after the figure at `index`: after the last of the figures that they bear on. */
export function cautionsAfter(figures: readonly string[], index: number): readonly Caution[] {
  const path = figures[index];
  if (path === undefined) return [];
  const later = figures.slice(index + 1);
  return cautions.filter(
    (caution) => caution.figures.includes(path) && !later.some((other) => caution.figures.includes(other)),
  );
}

export const cautionsOfBlock = (role: string): readonly Caution[] =>
  cautions.filter((caution) => caution.blocks.includes(role));

/** Fills the holes of a sentence; `show` gives undefined where there is no value. */
export function fillCaution(sentence: string, show: (path: string, unit: string) => string | undefined): string {
  return sentence.replace(/\[([^\]]*)\]/g, (_, piece: string) => {
    let missing = false;
    const filled = piece.replace(/\{([\w.]+)\|([^}]+)\}/g, (_hole, path: string, unit: string) => {
      const value = show(path, unit);
      missing ||= value === undefined;
      return value ?? '';
    });
    return missing ? '' : filled;
  });
}
