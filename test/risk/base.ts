/** A plain survey to vary: clay, water known month by month, liner straight on the clay. Invented. */
export function baseSurvey({
  depth = 0.3,
  spread = 0.1,
  source = 'six winters in a sealed pipe',
  level = -0.2,
  drawdown = 0,
}: {
  depth?: number;
  spread?: number;
  source?: string;
  level?: number;
  drawdown?: number;
} = {}): Record<string, string> {
  const months = Array.from({ length: 12 }, (_, m) => `site,${m + 1},${depth},${spread},${source}`);
  return {
    'site.csv': `item,value,unit,note
name,Test Ground,,invented
latitude,52,deg,
uphill_area,0,m2,
roof_area,0,m2,
mains_power,no,,
pump_acceptable,no,,
discharge_allowed,no,,
protected_ground,no,,
`,
    'pond.csv': `item,value,unit,note
shape,box,,
length,4,m,
width,3,m,
depth,1,m,
side_slope,1,,
water_above_rim_ground,${level},m,
usual_drawdown,${drawdown},m,
highest_raise,0,m,
ring_width,0,m,
ring_fill,clay,,
ring_cap,yes,,
bedding,none,,
emptied_in,never,,
`,
    'pits.csv': `pit,top_m,bottom_m,texture,structure,mottles,consistency,ksat_m_s,strength_kpa
P1,0,0.25,clay loam,rooted,none,firm,,
P1,0.25,2.6,clay,blocky,,stiff,1e-7,60
`,
    'heads.csv': `place,month,depth_m,spread_m,source\n${months.join('\n')}\n`,
    'levels.csv': 'point,role,distance_m,level_m\nA,rim,0,10\nB,rim,0,10\n',
  };
}
