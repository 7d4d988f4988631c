/** Sites that say something in every file, to be surveyed otherwise. All invented. */
import { baseSurvey } from '../risk/base.js';
import type { Files } from './sheets.js';

const HEADS = Array.from({ length: 12 }, (_, m) => {
  const wet = (1 - Math.cos(((m - 7) / 6) * Math.PI)) / 2;
  return [wet, m + 1] as const;
});

/** A sloping clay garden with a plan: two outlets, two gullies, a boundary, houses, three levelled holes, two spots. */
export function plannedGarden(): Files {
  const base = baseSurvey({ level: 0.05, drawdown: 0.1 });
  const head = (place: string, high: number, low: number) =>
    HEADS.map(
      ([wet, month]) => `${place},${month},${(low + (high - low) * wet).toFixed(3)},0.08,sealed pipe`,
    );
  return {
    ...base,
    'site.csv': `${base['site.csv']!.replace('discharge_allowed,no', 'discharge_allowed,yes')
      .replace('mains_power,no', 'mains_power,yes')
      .replace('pump_acceptable,no', 'pump_acceptable,yes')
      .replace(
        'uphill_area,0',
        'uphill_area,60',
      )}highest_water_mark,9.95,m,the cellar next door\nuphill_cover,lawn,,\n`,
    'pond.csv': base['pond.csv']!.replace('emptied_in,never', 'emptied_in,3;9')
      .replace('ring_width,0,m', 'ring_width,0.2,m')
      .replace('ring_fill,clay', 'ring_fill,topsoil')
      .replace('ring_cap,yes', 'ring_cap,no')
      .replace(/water_above_rim_ground,.*\n/, 'full_level,10.05,m,\ndays_empty,6,d,\n'),
    'pits.csv': `pit,top_m,bottom_m,texture,structure,mottles,consistency,ksat_m_s,strength_kpa
P1,0,0.25,clay loam,rooted,none,firm,,
P1,0.25,2.6,clay,blocky,few,stiff,3e-7,60
P2,0,0.3,clay loam,rooted,none,firm,,
P2,0.3,1.1,clay,blocky,common,firm,2e-7,45
P2,1.1,2.4,silty clay,massive,many,stiff,,70
P3,0,2,clay,blocky,few,stiff,,
`,
    'heads.csv': `place,month,depth_m,spread_m,source\n${[
      ...head('P1', 0.3, 1.3),
      ...head('P2', 0.45, 1.5),
      ...head('P3', 0.2, 1.1),
    ].join('\n')}\n`,
    'levels.csv': `point,role,x_m,y_m,level_m,note
here,spot,0,0,10.06,
up,spot,4,14,10.3,
A,rim,-2,-1.5,10,
B,rim,2,-1.5,10.02,
C,rim,2,1.5,10.12,
D,rim,-2,1.5,10.1,
P1,pit,-1,-4,9.95,
P2,pit,6,2,10.1,
P3,pit,-2,9,10.25,
pipe-end,outlet,1,-24,8.4,
culvert,outlet,-3,-30,8.35,
ditch,ditch,1,-25,8.2,
brook,ditch,-3,-31,8.1,
ditch-flood,flood,1,-25,8.7,
brook-flood,flood,-3,-31,9.6,
gully,discharge,12,3,10.4,
road,discharge,25,10,10.6,
shed,footing,9,6,9.4,
home,house,14,12,10.5,
next,neighbour-house,-22,5,10.2,
b1,boundary,-15,-40,9,
b2,boundary,-15,30,10,
b3,boundary,40,30,11,
`,
    'water.csv':
      'pit,date,time,reading,depth_m,hole_depth_m,hole_diameter_cm\nP1,2024-01-03,09:00,opened,2.2,2.2,10\nP1,2024-02-08,09:00,level,0.42,2.2,10\nP1,2024-03-09,09:00,level,0.55,2.2,10\n',
    'soakage.csv':
      'pit,test,minutes,depth_to_water_cm,hole_depth_cm,hole_diameter_cm,soaked_before\nP1,1,0,30,60,15,yes\nP1,1,30,33,,,\nP1,1,90,38,,,\n',
    'climate.csv': `month,rain_mm,tmean_c,et0_mm\n${[66, 48, 52, 47, 50, 54, 53, 58, 60, 76, 75, 70]
      .map(
        (rain, m) =>
          `${m + 1},${rain},${[4, 4, 6, 9, 12, 15, 17, 17, 14, 11, 7, 5][m]},${[12, 18, 38, 60, 85, 98, 102, 85, 55, 30, 14, 10][m]}`,
      )
      .join('\n')}\n`,
    'prices.csv': 'item,unit,price\n"perforated pipe, 100 mm",m,4.5\n"solid pipe, 100 mm",m,3\n',
  };
}

/** Water dipped through one winter in an open hole, no weather; everything by tape. */
export function dippedGarden(): Files {
  const { 'heads.csv': _, ...base } = baseSurvey({ level: -0.05, drawdown: 0.08 });
  const looks = [
    ['2023-10-12', 1.5],
    ['2023-11-11', 0.9],
    ['2023-12-09', 0.5],
    ['2024-01-13', 0.35],
    ['2024-02-10', 0.3],
    ['2024-03-10', 0.45],
    ['2024-04-13', 0.7],
    ['2024-05-12', 1.2],
  ];
  return {
    ...base,
    'pond.csv': base['pond.csv']!.replace('emptied_in,never', 'emptied_in,4').concat('days_empty,5,d,\n'),
    'levels.csv':
      'point,role,distance_m,level_m\nA,rim,0,10\nB,rim,0,10.08\nP1,pit,2,10.02\nout,outlet,24,8.5\nditch,ditch,25,8.3\nflood,flood,25,8.8\n',
    'water.csv': `pit,date,time,reading,depth_m,hole_depth_m,hole_diameter_cm\nP1,2023-09-10,15:00,opened,2.2,2.2,10\n${looks
      .map(([date, depth]) => `P1,${date},09:00,level,${depth},2.2,10`)
      .join('\n')}\n`,
  };
}

/** Only what the reader asks for: everything else is assumed. */
export function bareGarden(): Files {
  const { 'pits.csv': pits } = baseSurvey();
  return {
    'site.csv': 'item,value,unit,note\nname,Bare Ground,,invented\n',
    'pond.csv': 'item,value,unit,note\ndepth,0.9,m,\nlength,4,m,\nwidth,3,m,\nshelf_depth,0.3,m,\n',
    'pits.csv': pits!,
    'levels.csv': 'point,role,distance_m,level_m\nA,rim,0,10\nB,rim,0,10.05\nout,outlet,25,8.6\n',
    'heads.csv': `place,month,depth_m,spread_m,source\n${HEADS.map(([wet, month]) => `site,${month},${(1.4 - wet).toFixed(3)},0.1,sealed pipe`).join('\n')}\n`,
  };
}
