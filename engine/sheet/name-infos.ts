import type { NameInfo } from '../terms/index';
import { inUnitsOf, ONE } from '../units/index';
import type { Building, Named } from './builder';
import { calledIn } from './called';
import { withTitles } from './named';
import type { NameTold } from './specs';

/** What is told of everything that has a name, in the order of the page. */
export function namesOf(named: readonly Named[], building: Building): NameInfo[] {
  const infos = named.map((each) => infoOf(each, building));
  // What is typed for an axis or a row is called by what the axis or the row is of.
  const called = calledIn({ document: building.builder.document, names: infos });
  return infos.map((info) => ({ ...info, title: withTitles(info.title, called) }));
}

/** Where a condition stands in its list of answers: 0 and 1. */
const ANSWERS = ['no', 'yes'] as const;

function infoOf(named: Named, building: Building): NameInfo {
  const { builder } = building;
  const spec = 'text' in named ? named.text.spec : named.value;
  const reach = builder.find(spec.path)!;
  const { path, slot, cell, kind, unit, shown, suffix, ways, type, settable } = reach;
  const dimension = 'value' in named ? named.value.dimension : type?.kind === 'quantity' ? type.dimension : ONE;
  return {
    path,
    slot,
    kind,
    cell,
    title: spec.title,
    symbol: spec.symbol ?? '',
    dimension,
    unit: shown,
    suffix: suffix ?? '',
    ...(ways ? { ways } : {}),
    doc: inUnitsOf(spec.doc ?? '', builder.document.units),
    settable,
    ...(settable && unit !== shown ? { bare: unit } : {}),
    ...(type?.kind === 'option' ? { options: type.options } : {}),
    ...(type?.kind === 'truth' ? { options: ANSWERS } : {}),
    ...(spec.oneOf ? { options: spec.oneOf } : {}),
    ...bandsOf(spec),
    ...takenAt(spec.path, building),
  };
}

/** A field and the result that repeats it share a path: what stands in the one is what the other says. */
function takenAt(path: string, { texts }: Building): Pick<NameInfo, 'takes'> {
  const spec = texts.get(path)?.spec;
  const takes = spec?.text.trim() === '' ? spec.stands?.() : undefined;
  return takes === undefined ? {} : { takes };
}

function bandsOf({ usual, least, range, detail }: NameTold): Pick<NameInfo, 'usual' | 'least' | 'range' | 'detail'> {
  return {
    ...(usual ? { usual } : {}),
    ...(least ? { least } : {}),
    ...(range ? { range } : {}),
    ...(detail ? { detail } : {}),
  };
}
