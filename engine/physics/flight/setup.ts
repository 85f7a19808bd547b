/**
 * Everything that the steady flight needs, SI and radians; x aft of the datum, y outboard of the centreline, z up from
 * the reference line. Plain numbers, so that a caller builds it as one record literal.
 */
export interface FlightSetup {
  /** Mass (kg), gravity (m/s²), CG (m). */
  readonly mass: number;
  readonly gravity: number;
  readonly cgX: number;
  readonly cgY: number;
  readonly cgZ: number;
  /** Moments of inertia about the CG, kg·m²: about the axis along the span and about the upright one. */
  readonly inertiaSpan: number;
  readonly inertiaUp: number;

  readonly density: number;
  readonly kinematicViscosity: number;

  /** Height of the CG above the handle, m. */
  readonly height: number;
  /** Pilot's axis to the grip and to the guide, m. */
  readonly handleReach: number;
  readonly guideRadius: number;
  readonly lineCount: number;
  readonly lineDiameter: number;
  /** Of one line, kg/m. */
  readonly lineLinearMass: number;
  /** NaN: of a smooth cylinder by the local Reynolds number. */
  readonly lineDragCoefficient: number;
  readonly lineDragFactor: number;
  readonly guideX: number;
  readonly guideY: number;
  readonly guideZ: number;

  readonly wingArea: number;
  readonly wingQuarterChord: number;
  readonly meanChord: number;
  /**
   * Lift slope of the whole wing, 1/rad; setting of its chord to the reference line; angle of zero lift of its chord.
   */
  readonly wingSlope: number;
  readonly wingIncidence: number;
  readonly zeroLiftAngle: number;
  readonly momentCoefficient: number;
  /** c_d0 and C_L,max at the airspeed `sectionSpeed` (m/s); they go with its powers n and p. */
  readonly profileDrag: number;
  readonly liftLimit: number;
  readonly sectionSpeed: number;
  readonly dragPower: number;
  readonly liftPower: number;
  /** j and k in C_D = c_d0 + j C_L + k C_L². */
  readonly dragSlope: number;
  readonly inducedFactor: number;
  /** The lift acts at y_L = liftStation + liftStationTurn/R, the profile drag at y_D likewise. */
  readonly liftStation: number;
  readonly liftStationTurn: number;
  readonly dragStation: number;
  readonly dragStationTurn: number;

  readonly tailArea: number;
  readonly tailQuarterChord: number;
  readonly tailSlope: number;
  readonly downwash: number;
  readonly tailIncidence: number;
  /** Share of the angle of the elevator that acts like turning the whole surface. */
  readonly elevatorEffect: number;
  readonly tailInducedFactor: number;
  /** Profile drag C_D·A of the stabiliser and elevator, m². */
  readonly tailDragArea: number;

  readonly finArea: number;
  readonly finQuarterChord: number;
  /** Height of its centre above the reference line: its side force acts there. */
  readonly finZ: number;
  readonly finSlope: number;
  /** Trailing edge outboard positive. */
  readonly rudderAngle: number;
  readonly rudderEffect: number;

  /** ∫ dS, ∫ x dS, ∫ x² dS of the body's side about the datum, and its side-force slope, 1/rad. */
  readonly sideArea: number;
  readonly sideMoment: number;
  readonly sideSecondMoment: number;
  readonly sideSlope: number;
  /** C in N = q C β, m³, nose-out positive. */
  readonly slenderCouple: number;
  /** Cross-flow drag coefficient of the side beyond 10° of sideslip. */
  readonly crossFlowDrag: number;
  /** Profile drag C_D·A of everything but wing and tail, m². */
  readonly dragArea: number;

  readonly engineX: number;
  readonly engineY: number;
  readonly engineZ: number;
  /** Thrust line turned out and down, rad. */
  readonly sideThrust: number;
  readonly downThrust: number;
  /** Propeller and crankshaft about the shaft, kg·m². */
  readonly rotorInertia: number;
  /**
   * +1: the propeller's torque lifts the outboard wing (clockwise seen from behind in counter-clockwise flight seen
   * from above); −1: the reverse.
   */
  readonly turning: 1 | -1;
  /** The same for what spins: +1 where its turning with the lap lifts the nose. Other than `turning` where a gear turns it against the propeller. */
  readonly spinning: 1 | -1;
  /**
   * Thrust (N), torque (N·m) and shaft speed (rad/s) against airspeed at 0, knotStep, 2 knotStep …, `stride` places
   * apart from these indices.
   */
  readonly curves: Float64Array;
  readonly thrustAt: number;
  readonly torqueAt: number;
  readonly shaftSpeedAt: number;
  readonly stride: number;
  readonly knotStep: number;
  readonly knotCount: number;
}

/** R = R_g + a, a = y_cg − y_guide: radius to the CG, m. */
export const circleRadius = (s: Pick<FlightSetup, 'guideRadius' | 'cgY' | 'guideY'>): number =>
  s.guideRadius + s.cgY - s.guideY;

/** C_L,max (V/V_r)^p: greatest lift coefficient of the wing at an airspeed (m/s). Source: the section by Reynolds number. */
export const liftLimitAt = (
  s: Pick<FlightSetup, 'liftLimit' | 'sectionSpeed' | 'liftPower'>,
  airspeed: number,
): number => s.liftLimit * (airspeed / s.sectionSpeed) ** s.liftPower;

/** A set-up that is filled anew for every design. */
export type SetupRoom = { -readonly [K in keyof FlightSetup]: FlightSetup[K] };

export const newSetup = (): SetupRoom => ({
  mass: Number.NaN,
  gravity: Number.NaN,
  cgX: Number.NaN,
  cgY: Number.NaN,
  cgZ: Number.NaN,
  inertiaSpan: Number.NaN,
  inertiaUp: Number.NaN,
  density: Number.NaN,
  kinematicViscosity: Number.NaN,
  height: Number.NaN,
  handleReach: Number.NaN,
  guideRadius: Number.NaN,
  lineCount: Number.NaN,
  lineDiameter: Number.NaN,
  lineLinearMass: Number.NaN,
  lineDragCoefficient: Number.NaN,
  lineDragFactor: Number.NaN,
  guideX: Number.NaN,
  guideY: Number.NaN,
  guideZ: Number.NaN,
  wingArea: Number.NaN,
  wingQuarterChord: Number.NaN,
  meanChord: Number.NaN,
  wingSlope: Number.NaN,
  wingIncidence: Number.NaN,
  zeroLiftAngle: Number.NaN,
  momentCoefficient: Number.NaN,
  profileDrag: Number.NaN,
  liftLimit: Number.NaN,
  sectionSpeed: Number.NaN,
  dragPower: Number.NaN,
  liftPower: Number.NaN,
  dragSlope: Number.NaN,
  inducedFactor: Number.NaN,
  liftStation: Number.NaN,
  liftStationTurn: Number.NaN,
  dragStation: Number.NaN,
  dragStationTurn: Number.NaN,
  tailArea: Number.NaN,
  tailQuarterChord: Number.NaN,
  tailSlope: Number.NaN,
  downwash: Number.NaN,
  tailIncidence: Number.NaN,
  elevatorEffect: Number.NaN,
  tailInducedFactor: Number.NaN,
  tailDragArea: Number.NaN,
  finArea: Number.NaN,
  finQuarterChord: Number.NaN,
  finZ: Number.NaN,
  finSlope: Number.NaN,
  rudderAngle: Number.NaN,
  rudderEffect: Number.NaN,
  sideArea: Number.NaN,
  sideMoment: Number.NaN,
  sideSecondMoment: Number.NaN,
  sideSlope: Number.NaN,
  slenderCouple: Number.NaN,
  crossFlowDrag: Number.NaN,
  dragArea: Number.NaN,
  engineX: Number.NaN,
  engineY: Number.NaN,
  engineZ: Number.NaN,
  sideThrust: Number.NaN,
  downThrust: Number.NaN,
  rotorInertia: Number.NaN,
  turning: 1,
  spinning: 1,
  curves: new Float64Array(0),
  thrustAt: 0,
  torqueAt: 0,
  shaftSpeedAt: 0,
  stride: 0,
  knotStep: Number.NaN,
  knotCount: 0,
});
