import type { Family, Panel } from '../frame/family';
import { allowed, inLimits } from '../frame/limit-words';
import { type Zone, zonesOf } from '../frame/limits';
import type { SweepChartProps } from '../frame/props';
import { inSentence } from '../frame/words';
import { byUnit } from './plot';
import { splitShared } from './shared-words';

/**
 * Where like quantities of a plot keep within a limit that is drawn across it for one of them: "Within the limit of nose-over
 * margin on short grass: on pavement everywhere; on long grass up to 1 mm."
 */
export function sharedLimitSentences(family: Family, props: SweepChartProps): string[] {
  const { checks, names, values, cell } = props;
  const zonesIn = (panel: Panel): Zone[] => zonesOf(panel, checks, names, values);
  return (cell.together ? byUnit(family.panels) : []).flatMap((plot) =>
    plot.flatMap((owner) =>
      zonesIn(owner).flatMap((zone) => {
        // What each may not come under is said of each by itself.
        if (zone.own) return [];
        const has = (panel: Panel): boolean =>
          zonesIn(panel).some(({ side, limitSI }) => side === zone.side && limitSI === zone.limitSI);
        const said = plot
          .filter((panel) => panel !== owner && !has(panel))
          .flatMap(keepsTo(family, props, owner, zone));
        return said.length === 0 ? [] : [`Within the limit of ${inSentence(zone.of.title)}: ${said.join('; ')}.`];
      }),
    ),
  );
}

/** Of a quantity that begins to be called like the one with the limit: where it keeps within it, line by line. */
const keepsTo =
  (family: Family, { progress }: SweepChartProps, owner: Panel, zone: Zone) =>
  (panel: Panel): string[] => {
    const [, called] = splitShared([owner.info.title, panel.info.title]).rest;
    if (called === panel.info.title) return [];
    return family.lines.flatMap((line) =>
      inLimits(family, panel, line, progress, allowed([zone])).map(({ label, where }) =>
        [called, label, where].filter((each) => each !== '').join(' '),
      ),
    );
  };
