import type { Judged } from '../decision/index.js';
import { bestDig, dugDepth, headIn, UNIT_WEIGHT } from '../digging/index.js';
import {
  CORRUGATED_ROUGHNESS,
  fallNeeded,
  HOLES,
  LEAST_FALL,
  manningFull,
  orificeFlow,
  pipeRun,
  rationalRunoff,
  ringLets,
} from '../drain/index.js';
import { recorder } from '../formula/index.js';
import { discInflow } from '../seepage/index.js';
import { ksatAround, strengthAt } from '../site/index.js';
import { RUNOFF_COEFFICIENT } from '../soil/index.js';
import { sayer } from '../text/index.js';
import type { UnitSystem } from '../units/index.js';
import { heaveFactor, wetCrackedCut } from '../uplift/index.js';
import { drainInputOf } from '../works/index.js';
import { rowsWords, rowWords, type Told, type WorkedPart, withOrigins } from './workedFrom.js';

/** Sides and floor of the dig. */
export function diggingParts(a: Judged, units: UnitSystem): WorkedPart[] {
  const { site, decision } = a;
  const parts: WorkedPart[] = [];
  const say = sayer(units);
  const dug = dugDepth(site, decision.measures, decision.depth);
  const { ground } = site;
  const weight = 'unit weight of wet clay: common practice';
  const strength = strengthAt(ground, dug);
  if (strength && dug > 0) {
    const { use, steps } = recorder();
    use(wetCrackedCut, strength.median, UNIT_WEIGHT.mean);
    const from = ground.layers.map((l) => l.row.origin);
    parts.push({
      heading: 'The sides while digging',
      note: `Dug ${say.length(dug)} deep; an upright side should stand 1.5 times as high. Strength: ${strength.evidence.join(', ')}.`,
      from,
      steps: withOrigins(steps, [
        [wetCrackedCut, { c: `middle of the strength of the layers (${rowsWords(from)})`, g: weight }],
      ]),
      equals: [],
    });
  }
  for (const seam of ground.seams) {
    const left = seam.top - dug;
    const head = headIn(seam, bestDig(site, a.basis.dig, decision.measures, decision.depth).plan.months);
    const pressure = seam.top - head;
    if (left <= 0 || pressure <= 0) continue;
    const { use, steps } = recorder();
    use(heaveFactor, seam.coverWeight, left, pressure);
    const { from } = seam;
    const rows = seam.assumed
      ? 'not read in the wet half-year: taken as high as is credible'
      : rowsWords(from) || 'read in another hole';
    parts.push({
      heading: `The floor over the seam in ${seam.pit}`,
      note: `Dug ${say.length(dug)} deep; 1.25 is wanted.`,
      from,
      steps: withOrigins(steps, [
        [
          heaveFactor,
          {
            g: weight,
            t: `top of the seam in ${seam.pit} less the dug depth`,
            h: `top of the seam less its head (${rows})`,
          },
        ],
      ]),
      equals: [],
    });
  }
  return parts;
}

/** What the drain must take, source by source, at the likely end. */
export function inflowPart({ site, basis, decision, drain }: Judged, units: UnitSystem): WorkedPart[] {
  const { measures, depth } = decision;
  if (!drain || !measures.drain) return [];
  const { ground, catchment, tub } = site;
  const { sources, storm, level, outside, radius, leakHead } = drainInputOf(
    basis,
    measures,
    measures.drain,
    depth,
  );
  const { use, steps } = recorder();
  const equals: WorkedPart['equals'] = [];
  const say = sayer(units);
  const equal = (source: keyof typeof drain.inflow, per = 1) =>
    equals.push({ path: `drain.inflow_m3_s.${source}`, step: steps.length, per });
  use(discInflow, ksatAround(ground, depth).median, radius, Math.max(outside - level, 0));
  equal('clay');
  const lets = ringLets(tub && { capped: catchment.capped || measures.way === 'keptOut' });
  const comes = (source: keyof typeof drain.inflow) =>
    sources.some((each) => each.source === source && each.likely > 0);
  const rain = storm.rain / storm.seconds;
  const over: Told[] = [];
  const runs = (source: 'uphill' | 'roof', cover: keyof typeof RUNOFF_COEFFICIENT, area: number) => {
    if (!comes(source)) return;
    use(rationalRunoff, RUNOFF_COEFFICIENT[cover].likely, rain, area);
    equal(source, 1 / lets);
    over.push([
      rationalRunoff,
      {
        C: `share of the rain that ${cover === 'roof' ? 'a roof' : cover} sheds, likely end of the tables`,
        i: `${Number((storm.rain * 1000).toPrecision(4))} mm in ${Number((storm.seconds / 60).toPrecision(4))} min`,
        A: source === 'uphill' ? 'uphill_area (site.csv)' : 'roof_area (site.csv)',
      },
    ]);
  };
  runs('uphill', catchment.cover, catchment.uphillArea);
  runs('roof', 'roof', catchment.roofArea);
  use(orificeFlow, HOLES.likely, leakHead);
  equal('leak');
  const rings = drain.inflow.ring_storm;
  const layers = ground.layers.map((l) => l.row.origin);
  return [
    {
      heading: 'What the drain must take',
      note:
        `Each source at its likely end. ${lets > 0 && lets < 1 ? `Of what comes over ground the cap of clay over the ring lets ${Number((100 * lets).toPrecision(2))} % through. ` : ''}` +
        `${rings > 0 ? `Rain on the ring and what runs over the brim bring ${say.flow(rings)} while the storm lasts. ` : ''}` +
        `With the hole in the liner the pipe must take ${say.flow(drain.totalInflow)}.`,
      from: layers,
      steps: withOrigins(steps, [
        [
          discInflow,
          {
            K: `middle of the permeability of the ground around the pond (${rowsWords(layers)})`,
            r: 'circle as large as the mean of the areas at the rim and at the floor',
            s: `yearly highest water outside that nine years in ten stay below, ${say.level(outside)}, above the level that the drain holds, ${say.level(level)}`,
          },
        ],
        ...over,
        [
          orificeFlow,
          {
            A: 'a hole of 3 mm: our choice',
            h: `pond at its lowest of a middle year above the level that the drain holds, ${say.level(level)}`,
          },
        ],
      ]),
      equals,
    },
  ];
}

/** Fall and capacity of the run to an outlet. */
export function drainPart({ site, drain }: Judged): WorkedPart[] {
  if (drain?.kind !== 'outlet') return [];
  const { use, steps } = recorder();
  use(fallNeeded, LEAST_FALL, pipeRun(drain.input.end, drain.input.underSide ?? 0));
  use(manningFull, drain.pipe.diameter, drain.slope, CORRUGATED_ROUGHNESS);
  const outlet = site.survey.levels.find((p) => p.role === 'outlet' && p.point === drain.outlet);
  const row = outlet ? rowWords(outlet.origin) : 'levels.csv';
  return [
    {
      heading: 'The run to the outlet: fall and pipe',
      note: 'Sized with the rough end of corrugated pipe.',
      from: outlet ? [outlet.origin] : [],
      steps: withOrigins(steps, [
        [
          fallNeeded,
          {
            S: 'least fall laid: 1 %, common practice',
            L: `way from the foot of the side, under it and from the pond's edge to ${drain.outlet} (${row})`,
          },
        ],
        [
          manningFull,
          {
            D: `inside of ${drain.pipe.pipe.name}`,
            S: `fall there is over the way (floor − bed − outlet level, ${row}), between 0.05 % and 20 %`,
            n: 'corrugated drain pipe, rough end of the tables',
          },
        ],
      ]),
      equals: [
        { path: 'drain.fall_needed_m', step: 1, per: 1 },
        { path: 'drain.pipe_capacity_m3_s', step: 2, per: 1 },
      ],
    },
  ];
}
