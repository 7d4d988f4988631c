import type { Change } from '../decision/index.js';
import type { Measures } from '../heads/index.js';
import type { Outlet, Site } from '../site/index.js';
import type { Survey } from '../survey/index.js';

/**
 * A number that may be tried; range and step in m, levels in m above the lowest natural ground at the rim, slopes
 * horizontal to 1 vertical.
 */
export interface WhatIfParameter {
  /** what its slider is called */
  label: string;
  kind: 'length' | 'level' | 'slope';
  min: number;
  max: number;
  step: number;
  /** step where feet and inches are used, in; absent: the same in either */
  inches?: number;
  /** as surveyed, or as what is built for it has it; undefined: there is nothing to try */
  surveyed(site: Site, outlet?: Outlet, built?: Measures): number | undefined;
  /** end of the range that the survey sets */
  most?(site: Site): number;
  /** what it changes: the pond as it is kept, its outlet, what is built, or what is dug and filled back, which runs the water again */
  kept?(value: number): Change;
  outlet?(value: number): Partial<Outlet>;
  built?(value: number): Partial<Measures>;
  dug?(value: number): Partial<Survey['pond']>;
}

/** The numbers that may be tried, each declared once: the page's controls, links and notebooks follow. */
export const PARAMETERS = {
  depth: {
    label: 'Depth dug',
    kind: 'length',
    min: 0.2,
    max: 2.5,
    step: 0.05,
    inches: 1,
    surveyed: ({ pond }) => pond.depth,
    kept: (depth) => ({ depth }),
  },
  length: {
    label: 'Length at the rim',
    kind: 'length',
    min: 1,
    max: 12,
    step: 0.1,
    inches: 6,
    surveyed: ({ pond }) => pond.shape.length,
    dug: (length) => ({ length }),
  },
  width: {
    label: 'Width at the rim',
    kind: 'length',
    min: 1,
    max: 12,
    step: 0.1,
    inches: 6,
    surveyed: ({ pond }) => pond.shape.width,
    dug: (width) => ({ width }),
  },
  slope: {
    label: 'Sides go out, for each 1 down',
    kind: 'slope',
    min: 0,
    max: 4,
    step: 0.05,
    // Walls stand upright.
    surveyed: ({ pond }) => (pond.wall === 'none' ? pond.shape.sideSlope : undefined),
    dug: (side_slope) => ({ side_slope }),
  },
  raise: {
    label: 'Rim raised by',
    kind: 'length',
    min: 0,
    max: 3,
    step: 0.01,
    inches: 0.5,
    surveyed: ({ pond }, _, built) => (pond.highestRaise > 0 ? (built?.raise ?? 0) : undefined),
    most: ({ pond }) => pond.highestRaise,
    built: (raise) => ({ raise }),
  },
  full: {
    label: 'Pond full at',
    kind: 'level',
    min: -0.5,
    max: 0.8,
    step: 0.01,
    inches: 0.5,
    surveyed: ({ pond }) => pond.fullLevel,
    kept: (fullLevel) => ({ fullLevel }),
  },
  drawdown: {
    label: 'Held below full',
    kind: 'length',
    min: 0,
    max: 0.6,
    step: 0.01,
    inches: 0.5,
    surveyed: ({ pond: { kept } }) => ('held' in kept ? kept.held : undefined),
    kept: (held) => ({ kept: { held } }),
  },
  within: {
    label: 'Topped up when down by',
    kind: 'length',
    min: 0.01,
    max: 0.6,
    step: 0.01,
    inches: 0.5,
    surveyed: ({ pond: { kept } }) => ('within' in kept && kept.within < 1 ? kept.within : undefined),
    dug: (kept_within) => ({ kept_within, usual_drawdown: undefined }),
  },
  run: {
    label: 'Run of the pipe to its outlet',
    kind: 'length',
    min: 1,
    max: 60,
    step: 0.5,
    inches: 12,
    surveyed: (_, outlet) => outlet?.distance,
    outlet: (distance) => ({ distance }),
  },
  outlet: {
    label: 'Outlet at',
    kind: 'level',
    min: -4,
    max: 0.5,
    step: 0.01,
    inches: 0.5,
    surveyed: (_, outlet) => outlet?.level,
    outlet: (level) => ({ level }),
  },
} satisfies Record<string, WhatIfParameter>;

export type NumberKey = keyof typeof PARAMETERS;
/**
 * Numbers tried, m, levels above the lowest natural ground at the rim, `slope` horizontal to 1 vertical; `raise` is what
 * the rim is raised by, the `highest_raise` of the survey at most. Absent: as surveyed, or as what is built has it.
 */
export type WhatIfValues = { [key in NumberKey]?: number };

const KEYS = Object.keys(PARAMETERS) as NumberKey[];

/** What each number that is tried changes, of one kind. */
export function changesOf<Kind extends 'kept' | 'outlet' | 'built' | 'dug'>(
  numbers: WhatIfValues,
  kind: Kind,
): NonNullable<ReturnType<NonNullable<WhatIfParameter[Kind]>>> {
  const changes = KEYS.map((key) => {
    const value = numbers[key];
    return value === undefined ? {} : (PARAMETERS[key] as WhatIfParameter)[kind]?.(value);
  });
  return Object.assign({}, ...changes);
}

/** A number that can be tried: what it is now, and how far it goes. */
export type ParameterRange = [key: NumberKey, surveyed: number, most: number];

/** The numbers of a site that can be tried; `outlet` is the one that serves it best, `built` what the survey's answer builds. */
export function surveyedNumbers(site: Site, outlet: Outlet | undefined, built: Measures): ParameterRange[] {
  return KEYS.flatMap((key): ParameterRange[] => {
    const tried: WhatIfParameter = PARAMETERS[key];
    const value = tried.surveyed(site, outlet, built);
    return value === undefined ? [] : [[key, value, Math.max(tried.most?.(site) ?? tried.max, value)]];
  });
}

/** What is built, with what of it is tried; nothing goes farther than the survey allows. */
export function trialMeasures(site: Site, measures: Measures, tried: WhatIfValues): Measures {
  const { raise = measures.raise } = changesOf(tried, 'built');
  return tried.raise === undefined
    ? measures
    : { ...measures, raise: Math.min(raise, site.pond.highestRaise) };
}

/** Changes with the same key share one simulation of the water. */
export function waterKey(change: WhatIfValues): string {
  return JSON.stringify(changesOf(change, 'dug'));
}
