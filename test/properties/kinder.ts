/** Sites that get kinder step by step, all else equal: what may be dug there never becomes less. */
import type { OptionName } from '../../lib/contract/index.js';
import { isOption } from '../../lib/contract/index.js';
import { type Decision, judge } from '../../lib/decision/index.js';
import { siteModel } from '../../lib/site/index.js';
import { surveyOf } from '../folder.js';
import type { Files } from './sheets.js';

type Items = Record<string, string>;

/** Depth to the water of the clay, January first, m. */
const CLAY = [0.25, 0.25, 0.35, 0.55, 0.8, 1, 1.1, 1.15, 1.1, 0.9, 0.55, 0.35];
const SUMMER = [6, 7, 8, 9];

const sheet = (items: Items) =>
  `item,value,unit,note\n${Object.entries(items)
    .filter(([, said]) => said !== '')
    .map(([item, said]) => {
      const [value, unit = ''] = said.split(' ');
      return `${item},${value},${unit},\n`;
    })
    .join('')}`;

/** What is known of the water of a seam. */
type Read = 'nothing' | 'one look in July' | 'summer' | 'year';

interface Garden {
  pond: Items;
  site: Items;
  /** top of a sand under the clay, m; absent: none */
  seam?: number;
  read: Read;
  /** water of the seam, and of the clay, deeper by, m */
  seamDeeper: number;
  clayDeeper: number;
  kpa: number;
}

/** An invented garden of clay, 5 m by 3.5 m of pond in it, emptied in September. */
function surveyed({ pond, site, seam, read, seamDeeper, clayDeeper, kpa }: Garden): Files {
  const log = (pit: string, bottom: number) =>
    `${pit},0,0.25,clay loam,rooted,none,firm,\n${pit},0.25,${bottom},clay,blocky,common,firm,${kpa}\n`;
  const below = (top: number) =>
    `P2,${top},${(top + 1).toFixed(2)},sand,,,,\nP2,${(top + 1).toFixed(2)},${(top + 1.4).toFixed(2)},clay,massive,grey,stiff,70\n`;
  const heads = CLAY.flatMap((depth, m) => [
    `P1,${m + 1},${(depth + clayDeeper).toFixed(3)}`,
    ...(seam !== undefined && (read === 'year' || (read === 'summer' && SUMMER.includes(m + 1)))
      ? [`below:P2,${m + 1},${(depth + seamDeeper).toFixed(3)}`]
      : []),
  ]);
  return {
    'site.csv': sheet({
      latitude: '52 deg',
      uphill_area: '0 m2',
      roof_area: '0 m2',
      mains_power: 'no',
      pump_acceptable: 'no',
      discharge_allowed: 'no',
      protected_ground: 'no',
      wet_plants: 'no',
      organic_smell: 'no',
      ...site,
    }),
    'pond.csv': sheet({
      shape: 'oval',
      length: '5 m',
      width: '3.5 m',
      depth: '0.8 m',
      side_slope: '1',
      water_above_rim_ground: '0 m',
      highest_raise: '0.1 m',
      ring_width: '0 m',
      bedding: 'none',
      ballast: 'none',
      kept_within: '0.05 m',
      emptied_in: '9',
      days_empty: '3 d',
      built_in: '8;9',
      ...pond,
    }),
    'pits.csv': `pit,top_m,bottom_m,texture,structure,mottles,consistency,strength_kpa\n${log('P1', 1.3)}${log('P2', seam ?? 2.6)}${seam === undefined ? '' : below(seam)}`,
    'heads.csv': `place,month,depth_m\n${heads.join('\n')}\n`,
    'levels.csv': `point,role,distance_m,level_m\nr1,rim,0,10\nr2,rim,0,10.01\nP1,pit,2,10\nP2,pit,3,10\n${
      site.discharge_allowed === 'yes' ? 'out,outlet,14,9.1\nd,ditch,14.5,8.8\nf,flood,14.5,9\n' : ''
    }`,
    ...(seam !== undefined && read === 'one look in July'
      ? {
          'water.csv': `pit,date,time,reading,depth_m,hole_depth_m,hole_diameter_cm\nP2,2024-07-15,10:00,strike,${seam},${seam},10\nP2,2024-07-15,11:00,level,0.55,${(seam + 1.4).toFixed(2)},10\n`,
        }
      : {}),
  };
}

const GARDEN: Garden = { pond: {}, site: {}, read: 'nothing', seamDeeper: 0, clayDeeper: 0, kpa: 45 };
const steps = (from: number, to: number, by: number) =>
  Array.from({ length: Math.round((to - from) / by) + 1 }, (_, i) => Number((from + i * by).toFixed(3)));

/** Ways in which a site gets kinder, with how it is at each step. */
export const KINDER: Record<string, (by?: number) => Partial<Garden>[]> = {
  ...Object.fromEntries(
    (['nothing', 'one look in July', 'summer', 'year'] as Read[]).map((read) => [
      `a deeper seam, read: ${read}`,
      (by = 0.1) => steps(0.8, 2, by).map((seam) => ({ seam, read })),
    ]),
  ),
  'lower water in the seam': (by = 0.1) =>
    steps(-0.3, 0.6, by).map((seamDeeper) => ({ seam: 1.3, read: 'year', seamDeeper })),
  'lower water in the clay': (by = 0.1) => steps(-0.3, 0.6, by).map((clayDeeper) => ({ clayDeeper })),
  'stronger clay': () => [6, 9, 12, 16, 20, 30, 45, 70].map((kpa) => ({ kpa, pond: { side_slope: '0.5' } })),
};

/** Ponds and places that are asked for. */
export const ASKED: Record<string, { pond?: Items; site?: Items }> = {
  'emptied in September': {},
  'never emptied': { pond: { emptied_in: 'never' } },
  'emptied in January': { pond: { emptied_in: '1' } },
  'emptied at any time': { pond: { emptied_in: '' } },
  'a rim that stays': { pond: { highest_raise: '0 m' } },
  'wide and deep': { pond: { depth: '1.2 m', length: '7 m', width: '5 m' } },
  'dug in July': { pond: { built_in: '7' } },
  'kept within 15 cm': { pond: { kept_within: '0.15 m' } },
  'empty for ten days': { pond: { days_empty: '10 d' } },
  'there already': { pond: { state: 'existing' } },
  'an outlet near the floor': { site: { discharge_allowed: 'yes' } },
};

/** The surveys of a way, for what is asked, the harshest first. */
export function kinderSites(way: string, asked: string, by?: number): Files[] {
  const { pond = {}, site = {} } = ASKED[asked]!;
  return KINDER[way]!(by).map((step) =>
    surveyed({ ...GARDEN, ...step, site, pond: { ...step.pond, ...pond } }),
  );
}

/** Depths searched lie so far apart, m: that samples or a first candidate are chosen otherwise shows as one of them. */
const STEP = 0.05;
/** Less depth that may be emptied as wished comes before more that may not, down to this share of it: and is told with that. */
const EMPTIED_AGAIN = 0.7;
const DEAR: OptionName[] = ['drain-to-sump', 'ballast', 'drain-to-outlet', 'cutoff-drain'];

const depthOf = ({ option, depth }: Decision) => (option === 'shallower' || isOption(option) ? depth : 0);
const isDear = ({ option, also }: Decision) =>
  [option, ...also].some((name) => DEAR.includes(name as OptionName));

/** Whether the answer of a kinder site is no less: by depth, or by what it may be used for or needs no more. */
function isNoLess(harsh: Decision, kind: Decision): boolean {
  const [before, now] = [depthOf(harsh), depthOf(kind)];
  if (now >= before - STEP - 1e-9) return true;
  if (now > 0 && isDear(harsh) && !isDear(kind)) return true;
  const again = harsh.emptyingRuled && !kind.emptyingRuled;
  const told = kind.unemptied?.depth ?? 0;
  return again && now >= EMPTIED_AGAIN * before - STEP && told >= before - STEP - 1e-9;
}

/** Depths that become less along a way, of all pairs of its steps. */
export function lessenings(sites: Files[], samples = 64): string[] {
  const answers = sites.map((files) => judge(siteModel(surveyOf(files), { seed: 1, samples })).decision);
  const said = (d: Decision) =>
    `${depthOf(d)} m (${[d.option, ...d.also].join(', ')}${d.emptyingRuled ? ', ruled' : ''}${d.open ? `, ${d.open} open` : ''}${d.change ? `, ${JSON.stringify(d.change)}` : ''})`;
  return answers.flatMap((kind, j) =>
    answers
      .slice(0, j)
      .flatMap((harsh, i) =>
        isNoLess(harsh, kind) ? [] : [`step ${i}: ${said(harsh)}, step ${j}: ${said(kind)}`],
      ),
  );
}
