import { CORRUGATED_ROUGHNESS, fallNeeded, LEAST_FALL, manningFull } from '../drain/index.js';
import { recorder } from '../formula/index.js';
import { heaveFactor, wetCrackedCut } from '../uplift/index.js';
import type { Judged } from './assess.js';
import { dugDepth } from './digging.js';
import { sayer } from './say.js';
import { UNIT_WEIGHT } from './sides.js';
import { rowsWords, rowWords, type WorkedPart, withOrigins } from './workedFrom.js';

/** Sides and floor of the dig. */
export function diggingParts(a: Judged): WorkedPart[] {
  const { site, decision } = a;
  const parts: WorkedPart[] = [];
  const say = sayer(site);
  const dug = dugDepth(site, decision.measures, decision.depth);
  const { ground } = site;
  const weight = 'unit weight of wet clay: common practice';
  if (ground.strength && dug > 0) {
    const { use, steps } = recorder();
    use(wetCrackedCut, ground.strength.median, UNIT_WEIGHT.mean);
    const from = ground.layers.map((l) => l.row.origin);
    parts.push({
      heading: 'The sides while digging',
      note: `Dug ${say.length(dug)} deep; an upright side should stand 1.5 times as high. Strength: ${ground.strength.evidence.join(', ')}.`,
      from,
      steps: withOrigins(steps, [
        [wetCrackedCut, { c: `middle of the strength of the layers (${rowsWords(from)})`, g: weight }],
      ]),
      equals: [],
    });
  }
  for (const seam of ground.seams) {
    const left = seam.top - dug;
    const pressure = seam.top - seam.headDepth;
    if (left <= 0 || pressure <= 0) continue;
    const { use, steps } = recorder();
    use(heaveFactor, UNIT_WEIGHT.mean, left, pressure);
    const from = site.survey.heads.filter((h) => h.place === `below:${seam.pit}`).map((h) => h.origin);
    const rows = from.map(rowWords).join(', ') || 'no reading below the clay';
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

/** Fall and capacity of the run to an outlet. */
export function drainPart({ site, drain }: Judged): WorkedPart[] {
  if (drain?.kind !== 'outlet') return [];
  const { use, steps } = recorder();
  use(fallNeeded, LEAST_FALL, drain.input.end.distance);
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
            L: `way from the pond's edge to ${drain.outlet} (${row})`,
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
