import balanceLesson from '../../../data/lessons/balance_lesson.json?raw';
import controlLesson from '../../../data/lessons/control_lesson.json?raw';
import fuelLesson from '../../../data/lessons/fuel_lesson.json?raw';
import guideLesson from '../../../data/lessons/guide_lesson.json?raw';
import linesLesson from '../../../data/lessons/lines_lesson.json?raw';
import noseLesson from '../../../data/lessons/nose_lesson.json?raw';
import speedLesson from '../../../data/lessons/speed_lesson.json?raw';
import testLesson from '../../../data/lessons/test_lesson.json?raw';
import tipLesson from '../../../data/lessons/tip_lesson.json?raw';
import windLesson from '../../../data/lessons/wind_lesson.json?raw';
import bestWay from '../../../data/studies/best_way.json?raw';
import controlsStudy from '../../../data/studies/controls_study.json?raw';
import engineAndTail from '../../../data/studies/engine_and_tail.json?raw';
import gearStudy from '../../../data/studies/gear_study.json?raw';
import leadoutsStudy from '../../../data/studies/leadouts_study.json?raw';
import logStudy from '../../../data/studies/log_study.json?raw';
import pullTestStudy from '../../../data/studies/pull_test_study.json?raw';
import raceStudy from '../../../data/studies/race_study.json?raw';
import tankStudy from '../../../data/studies/tank_study.json?raw';
import tipWeightStudy from '../../../data/studies/tip_weight_study.json?raw';
import tolerancesStudy from '../../../data/studies/tolerances_study.json?raw';
import weighingStudy from '../../../data/studies/weighing_study.json?raw';
import whichLines from '../../../data/studies/which_lines.json?raw';
import whichPropeller from '../../../data/studies/which_propeller.json?raw';
import windStudy from '../../../data/studies/wind_study.json?raw';

/** The files of all studies, in the order of the builder's year. */
export const studyFiles: readonly string[] = [
  engineAndTail,
  tipWeightStudy,
  whichLines,
  leadoutsStudy,
  whichPropeller,
  windStudy,
  tankStudy,
  gearStudy,
  weighingStudy,
  pullTestStudy,
  controlsStudy,
  raceStudy,
  bestWay,
  tolerancesStudy,
  logStudy,
];

/** The files of all lessons, from what is felt in the hand to what is seen at the field. */
export const lessonFiles: readonly string[] = [
  balanceLesson,
  speedLesson,
  guideLesson,
  tipLesson,
  linesLesson,
  windLesson,
  fuelLesson,
  noseLesson,
  testLesson,
  controlLesson,
];
