/** What the drain must take, source by source. */

import type { Judged } from '../decision/index.js';
import {
  allInflow,
  type Ends,
  governingSource,
  inflowLeft,
  orificeFlow,
  overBrim,
  rainIntensity,
  rainWithRoof,
  rationalRunoff,
  ringInStorm,
  ringLets,
  type SourceInflow,
  soundInflow,
  throughRing,
  totalOf,
} from '../drain/index.js';
import { tubHolds, tubVolume } from '../groundwater/index.js';
import { Assumptions, ringFloor, ringFrom, tubOf } from '../site/index.js';
import { sayer } from '../text/index.js';
import type { UnitSystem } from '../units/index.js';
import { depthOver, floorSide, lowestUsual } from '../uplift/index.js';
import { drainInputOf } from '../works/index.js';
import { heldRow, sideRow, tellLevels, tellShape } from './workedBasics.js';
import { drawnLacks, drawnWater } from './workedDrawn.js';
import { assumed, pondItem, pondRow, Recording, siteRow } from './workedFrom.js';

/** The dug ring: its area and what it holds when it is full. */
export function ringPart({ site }: Judged): Recording[] {
  const { pond, tub } = site;
  if (!tub) return [];
  const r = new Recording(
    'The dug ring and its storage',
    'What was dug and filled back around and under the liner, full to the ground.',
  );
  tellShape(r, site, assumed('the rim'));
  tellShape(r, site, pondItem(site, 'depth', pond.depth));
  r.tell(ringFrom, { w: pondItem(site, 'ring_width', pond.ring.width) });
  r.tell(ringFloor, {
    r:
      pond.ring.depth === undefined
        ? assumed('as deep as the pond')
        : pondItem(site, 'ring_depth', pond.ring.depth),
    d: pondItem(site, 'depth', pond.depth),
  });
  tubOf(pond, site.places, new Assumptions(), r.use);
  const fill = pond.ring.width > 0 ? site.survey.pond.ring_fill : undefined;
  r.tell(tubHolds, {
    ...(tub.bedArea > 0 ? {} : { B: assumed('no bedding') }),
    n: pondRow(site, 'bedding', 'drainable porosity by table'),
    t: pondItem(site, 'bedding_thickness', pond.bedding.thickness),
    m: fill
      ? pondRow(site, 'ring_fill', 'drainable porosity by table')
      : assumed('drainable porosity by table'),
    z: assumed('full to the lowest ground at the rim'),
  });
  tubVolume(tub, tub.spill, r.use);
  return [r];
}

/** Every source at its likely end, and all of them together. */
export function inflowPart(a: Judged, units: UnitSystem): Recording[] {
  const { site, basis, decision, drain } = a;
  const { measures, depth } = decision;
  if (!drain || !measures.drain) return [];
  const { catchment, tub } = site;
  const say = sayer(units);
  const lets = ringLets(tub && { capped: catchment.capped || measures.way === 'keptOut' });
  const r = new Recording(
    'What the drain must take',
    `Each source at its likely end. ${lets > 0 && lets < 1 ? `Of what comes over ground the cap of clay over the ring lets ${Number((100 * lets).toPrecision(2))} % through. ` : ''}` +
      `With the hole in the liner the pipe must take ${say.flow(drain.totalInflow)}.`,
    site.ground.layers.map((l) => l.row.origin),
  );
  const { way, cutoff } = measures;
  drawnWater(r, a, basis, { of: 'year', way, cutoff }, 0.9, basis.highs.yearly(measures, 0.9));
  drawnLacks(r, a, basis, 0.5);
  tellLevels(r, site, measures, depth);
  tellStorm(r, a, lets);
  const { input, sources } = drainInputOf(basis, measures, measures.drain, depth, new Assumptions(), r.use);
  totalOf(input.inflow, r.use);
  tellSources(r, sources);
  governingSource(sources, r.use);
  // In the order in which they were recorded.
  const at = (title: string, i = 0) => r.steps.filter((step) => step.title === title)[i];
  const same = (source: string, value: number, title: string) => {
    const of = r.steps.findLast((step) => step.result === value && step.title === title) ?? at(title);
    if (value > 0 && of?.result === value) r.equals.push({ path: `drain.inflow_m3_s.${source}`, of, per: 1 });
  };
  const { inflow } = drain;
  const over = (value: number) =>
    r.steps.some((step) => step.title === throughRing.title && step.result === value)
      ? throughRing.title
      : rationalRunoff.title;
  same('clay', inflow.clay, 'Seepage to the floor of a hole (disc on a half-space)');
  same('ring_storm', inflow.ring_storm, ringInStorm.title);
  same('roof', inflow.roof, over(inflow.roof));
  same('uphill', inflow.uphill, over(inflow.uphill));
  same('leak', inflow.leak, orificeFlow.title);
  return [r, endPart(a, 'low', lets), endPart(a, 'high', lets)];
}

/** The same at another end of what is likely. */
function endPart(a: Judged, end: 'low' | 'high', lets: number): Recording {
  const { site, basis, decision } = a;
  const { measures, depth } = decision;
  const r = new Recording(
    `What the drain must take, ${end} end`,
    'The hole in the liner is an accident that the drain must carry; it is not counted in the sum.',
    site.ground.layers.map((l) => l.row.origin),
  );
  tellLevels(r, site, measures, depth);
  tellStorm(r, a, lets, end);
  const { sources } = drainInputOf(basis, measures, measures.drain!, depth, new Assumptions(), r.use, end);
  tellSources(r, sources, end);
  governingSource(sources, r.use, end);
  return r;
}

/** Sources that do not come. */
function tellSources(r: Recording, sources: SourceInflow[], end: keyof Ends = 'likely'): void {
  const none = assumed('none comes');
  const of = { r: 'ring_storm', o: 'roof', u: 'uphill', b: 'overflow' } as const;
  const lacks = (name: SourceInflow['source']) => sources.find(({ source }) => source === name)![end] === 0;
  r.tell(
    soundInflow,
    Object.fromEntries(Object.entries(of).flatMap(([symbol, name]) => (lacks(name) ? [[symbol, none]] : []))),
  );
  const { source } = governingSource(sources);
  r.tell(inflowLeft, {
    p: source.measure
      ? assumed('share that passes what keeps it away: common practice')
      : assumed('nothing above ground keeps it away'),
  });
}

/** Where the numbers of storm, catchment and leak come from. */
function tellStorm(
  r: Recording,
  { site, decision, drain }: Judged,
  lets: number,
  end: keyof Ends = 'likely',
): void {
  const { survey, catchment, pond, tub } = site;
  const said = (item: 'storm_rain' | 'storm_hours', value: string) =>
    survey.site[item] === undefined ? assumed(value) : siteRow(site, item);
  const nought = assumed('nought');
  r.tell(rainIntensity, {
    r: said('storm_rain', 'a heavy summer storm of 30 mm, our choice'),
    t: said('storm_hours', 'falling in one hour, our choice'),
  });
  const kept = decision.measures.way === 'keptOut';
  const covers = [
    ...(tub ? [{ C: assumed('all of the rain on the ring goes in') }] : []),
    ...(!kept && catchment.roofArea > 0
      ? [
          {
            C: assumed(`share of the rain that a roof sheds, ${end} end of the tables`),
            A: siteRow(site, 'roof_area'),
          },
        ]
      : []),
    ...(!kept && catchment.uphillArea > 0
      ? [
          {
            C: assumed(
              `share of the rain that ${catchment.cover} sheds, ${end} end of the tables${end === 'high' ? ', or what wet ground cannot take in' : ''}`,
            ),
            A:
              survey.site.uphill_area === undefined
                ? assumed('20 m² of lawn, uphill_area is not said')
                : siteRow(site, 'uphill_area'),
          },
        ]
      : []),
  ];
  for (const words of covers) r.tell(rationalRunoff, words);
  const rain = said('storm_rain', 'a heavy summer storm of 30 mm, our choice');
  if (catchment.pondRoof > 0)
    r.tell(rainWithRoof, {
      r: rain,
      C: assumed('share of the rain that a roof sheds, likely end of the tables'),
      R: siteRow(site, 'roof_into_pond'),
    });
  r.tell(overBrim, {
    ...(catchment.pondRoof > 0 ? {} : { r: rain }),
    t: said('storm_hours', 'falling in one hour, our choice'),
    ...(end === 'high'
      ? { d: assumed('full to the brim') }
      : 'held' in pond.kept
        ? { d: heldRow(site, pond.kept.held) }
        : {}),
  });
  r.tell(throughRing, {
    s: assumed(lets === 0 ? 'no ring leads it down' : 'a cap of clay lets a twentieth through'),
  });
  r.tell(orificeFlow, { A: assumed(`a hole of ${{ low: 1, likely: 3, high: 10 }[end]} mm: our choice`) });
  r.tell(depthOver, { e: nought });
  const { length, width, sideSlope } = pond.shape;
  const deep = {
    s: pondItem(site, 'side_slope', sideSlope),
    d: decision.depth === pond.depth ? pondItem(site, 'depth', pond.depth) : assumed('depth of this answer'),
  };
  r.tell(floorSide, { L: sideRow(site, 'length', length), ...deep });
  r.tell(floorSide, { L: sideRow(site, 'width', width), ...deep });
  if ('held' in pond.kept) r.tell(lowestUsual, { d: heldRow(site, pond.kept.held) });
  const none = assumed('none comes');
  const { inflow } = drain!;
  r.tell(allInflow, {
    ...(inflow.roof === 0 ? { o: none } : {}),
    ...(inflow.uphill === 0 ? { u: none } : {}),
  });
}
