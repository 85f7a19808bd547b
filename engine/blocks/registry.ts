import { air } from './air/index';
import { balance } from './balance/index';
import { ballast } from './ballast/index';
import type { AnyBlock } from './block';
import { body } from './body/index';
import { control } from './control/index';
import { electric, measuredLap, tachometer, thrustLaw, twoStroke } from './engines/index';
import { flight } from './flight/index';
import { foundCg } from './found-cg/index';
import { gear } from './gear/index';
import { glide } from './glide/index';
import { lap } from './lap/index';
import { launch } from './launch/index';
import { leadouts } from './leadouts/index';
import { lineShape } from './line-shape/index';
import { lines } from './lines/index';
import { measuredPropeller, propeller } from './propeller/index';
import { race } from './race/index';
import { room } from './room/index';
import { shutoff } from './shutoff/index';
import { strength } from './strength/index';
import { tail } from './tail/index';
import { tank } from './tank/index';
import { wing } from './wing/index';

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
  foundCg,
  flight,
  lineShape,
  lap,
  launch,
  glide,
  tank,
  gear,
  room,
  strength,
  control,
  shutoff,
  race,
];
