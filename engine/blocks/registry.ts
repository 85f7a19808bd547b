import { air } from './air';
import { balance } from './balance';
import { ballast } from './ballast';
import type { AnyBlock } from './block';
import { body } from './body';
import { control } from './control';
import { electric } from './electric';
import { flight } from './flight';
import { gear } from './gear';
import { glide } from './glide';
import { lap } from './lap';
import { launch } from './launch';
import { leadouts } from './leadouts';
import { lineShape } from './line-shape';
import { lines } from './lines';
import { measuredLap } from './measured-lap';
import { measuredPropeller } from './measured-propeller';
import { propeller } from './propeller';
import { race } from './race';
import { shutoff } from './shutoff';
import { strength } from './strength';
import { tachometer } from './tachometer';
import { tail } from './tail';
import { tank } from './tank';
import { thrustLaw } from './thrust-law';
import { twoStroke } from './two-stroke';
import { wing } from './wing';

/** Every block that a document may use, in the order in which a builder would add them. */
export const blocks: readonly AnyBlock[] = [
  air,
  wing,
  tail,
  body,
  thrustLaw,
  measuredLap,
  tachometer,
  twoStroke,
  electric,
  propeller,
  measuredPropeller,
  leadouts,
  lines,
  balance,
  ballast,
  flight,
  lineShape,
  lap,
  launch,
  glide,
  tank,
  gear,
  strength,
  control,
  shutoff,
  race,
];
