/** The drain: filter, bed, pipe and fall or sump, and what it lowers next door. */

import type { SiteDrain } from '../contract/index.js';
import type { Judged } from '../decision/index.js';
import {
  aroundPipe,
  BED_THICKNESS,
  BEDS,
  type Bed,
  type BedLayers,
  bedHolds,
  bedReserve,
  bedUnderFloor,
  bedUnderside,
  conveyanceOf,
  darcyWeisbach,
  evenInflow,
  fallNeeded,
  fallThere,
  filterBand,
  floodReserve,
  fullVelocity,
  HEAVY_CLAY,
  halfPipe,
  headInBed,
  isMat,
  kilowattHours,
  LEAST_FALL,
  layerPotential,
  lineLength,
  loweringOf,
  manningFull,
  momentBetween,
  netOnLiner,
  netUnderLiner,
  openArea,
  orificeFlow,
  pumpEnergy,
  pumpHead,
  relativeRoughness,
  retentionFine,
  retentionMixed,
  reynoldsNumber,
  runLength,
  sizeBetween,
  sizeReserve,
  strataOf,
  sumpHolds,
  sumpStroke,
  sumpVolume,
  timesOver,
} from '../drain/index.js';
import { flowDepth, loweredBy, placeInReach, waterRoundDrain } from '../seepage/index.js';
import { depthOver } from '../uplift/index.js';
import { drainInputOf, loweredGround } from '../works/index.js';
import { pointOf, tellLevels, wayRow } from './workedBasics.js';
import { drawnWater } from './workedDrawn.js';
import { assumed, Recording, rowsWords } from './workedFrom.js';

/** What each link of the drain takes. */
export function drainParts(a: Judged): Recording[] {
  const { site, basis, decision, drain } = a;
  const { measures, depth } = decision;
  if (!drain || !measures.drain) return [];
  const { input } = drainInputOf(basis, measures, measures.drain, depth);
  const r = new Recording(
    'The drain, link by link: filter, bed, pipe, and fall or sump',
    'What each link can take over what it must: 1 and more serves.',
    site.ground.layers.map((l) => l.row.origin),
  );
  tellLevels(r, site, measures, depth);
  tellLinks(r, a);
  conveyanceOf(input, r.use);
  const last = (title: string, value: number) =>
    r.steps.findLast((step) => step.title === title && step.result === value);
  const same = (path: string, title: string, value: number | undefined, per = 1) => {
    const of = value === undefined ? undefined : last(title, value);
    if (of) r.equals.push({ path, of, per });
  };
  same('drain.pipe_capacity_m3_s', manningFull.title, drain.pipe.capacity);
  if (drain.kind === 'outlet') {
    same('drain.fall_needed_m', fallNeeded.title, drain.fallNeeded);
    same('drain.fall_available_m', fallThere.title, drain.fallAvailable);
  }
  for (const [link, value] of Object.entries(drain.reserve)) {
    const of = r.steps.findLast((step) => step.result === value && step.unit === '-');
    if (of) r.equals.push({ path: `drain.reserve.${link}`, of, per: 1 });
  }
  return [r];
}

/** Where the numbers of the links come from. */
function tellLinks(r: Recording, { site, decision, drain }: Judged): void {
  const { drain: kind } = decision.measures;
  const practice = (words: string) => assumed(`${words}: common practice`);
  const bed = practice(`a bed ${BED_THICKNESS} m thick`);
  r.tell(fallThere, { t: bed }).tell(fallNeeded, { S: practice(`least fall laid ${LEAST_FALL}`) });
  if (kind?.kind === 'outlet') r.tell(runLength, { d: wayRow(pointOf(site, 'outlet', kind.outlet.name)) });
  const inside = assumed(`inside of ${drain!.pipe.pipe.name}`);
  const least = kind?.kind === 'sump' ? { S: practice(`least fall laid ${LEAST_FALL}`) } : {};
  r.tell(manningFull, { D: inside, n: assumed('corrugated drain pipe, smooth end of the tables'), ...least });
  r.tell(manningFull, { D: inside, n: assumed('corrugated drain pipe, rough end of the tables'), ...least });
  r.tell(halfPipe, { D: inside });
  tellBed(r, drain!.bed);
  tellFilter(r, drain!);
  r.tell(openArea, { a: assumed('1 in² a foot, the least of ASTM F405'), b: practice('half of it blocked') });
  r.tell(orificeFlow, { h: assumed('head kept in the bed: our choice') });
  r.tell(floodReserve, { d: assumed('head lost in the bed: our choice') });
  r.tell(bedHolds, { t: bed, n: practice('voids of the bed') });
  r.tell(bedUnderside, { t: bed });
  const pump = assumed('an ordinary drainage pump and its line: our choice');
  const trial = 'by trial: until the heads of pump and line are one';
  r.tell(pumpHead, { S: pump, M: pump, Q: trial });
  r.tell(fullVelocity, { D: pump, Q: trial });
  if (kind?.kind === 'sump') r.tell(timesOver, {}).tell(timesOver, {}).tell(timesOver, { Q: trial });
  r.tell(reynoldsNumber, { D: pump, w: assumed('water at 5 °C') });
  r.tell(relativeRoughness, { k: practice('plastic pipe'), D: pump });
  r.tell(darcyWeisbach, { D: pump, k: practice('two bends, a valve and the exit') });
  if (kind?.kind === 'sump')
    r.tell(lineLength, {
      d: wayRow(pointOf(site, 'discharge', kind.to.name) ?? pointOf(site, 'outlet', kind.to.name)),
    });
  r.tell(sumpVolume, { T: practice('10 starts an hour'), Q: trial });
  r.tell(sumpHolds, { a: practice('side of a sump dug by hand') });
  r.tell(sumpStroke, { a: practice('side of a sump dug by hand') });
  r.tell(pumpEnergy, { n: assumed('efficiency of pump and motor: our choice') });
  r.tell(kilowattHours, {});
}

/** Where the numbers of the bed come from. */
function tellBed(r: Recording, bed: Bed): void {
  r.tell(evenInflow, {}).tell(evenInflow, { s: assumed('a ring takes what comes down the sides') });
  const strata = [...strataOf(bed)].reverse();
  // Asked for the height allowed and for the pipe, with the water of the sides and without.
  for (let asked = 0; asked < 4; asked++)
    for (const [at] of strata.entries()) {
      const words = assumed(`layer ${at + 1} of the bed from below: common practice`);
      r.tell(layerPotential, {
        K: words,
        t: words,
        b: words,
        ...(at === 0 ? { g: assumed('nothing below') } : {}),
        ...(asked % 2 === 0 ? { h: assumed('as high as is allowed in the bed: our choice') } : {}),
        ...(asked % 2 === 1 && isMat(bed) ? { h: assumed('the middle of the mat') } : {}),
      });
    }
  r.tell(bedReserve, {});
}

/** Where the numbers of the filter come from. */
function tellFilter(r: Recording, { bed, input }: SiteDrain): void {
  const { filter, core }: BedLayers = BEDS[bed];
  const share = assumed('share that the rule asks for');
  const curve = (of: string) => {
    const words = assumed(`grain sizes of ${of}`);
    return { a: words, b: words, p: share, f: words, g: words };
  };
  const soil = curve('the soil under the bed, by its clay, silt and sand');
  r.tell(sizeBetween, soil).tell(sizeBetween, soil);
  if (filter !== 'fabric') {
    r.tell(sizeBetween, curve(`${filter}, by its standard`));
    if (core)
      r.tell(sizeBetween, curve(`${filter}, by its standard`)).tell(
        sizeBetween,
        curve(`${core}, by its standard`),
      );
  }
  r.tell(sizeBetween, curve(`${aroundPipe(bed)}, by its standard`));
  const { category } = filterBand(input.soil ?? HEAVY_CLAY);
  r.tell(retentionFine, { f: assumed('9, for soil that does not disperse') });
  r.tell(retentionMixed, { a: soil.a });
  const bought = assumed('apparent opening of the fabric bought: common practice');
  if (filter === 'fabric') r.tell(sizeReserve, { a: assumed('AASHTO M 288 for this soil'), d: bought });
  else r.tell(sizeReserve, category === 2 ? { a: assumed('0.7 mm, the rule for category 2') } : {});
  if (filter !== 'fabric' && core) r.tell(sizeReserve, {});
  r.tell(sizeReserve, { d: assumed('slots of the pipe, or openings of its sock: common practice') });
}

/** The water that the bed leaves under the emptied liner, midway between its pipes. */
export function bedWaterParts(a: Judged): Recording[] {
  const { site, basis, decision, drain } = a;
  const { measures, depth } = decision;
  if (!drain || !measures.drain) return [];
  const { bed, layout, input, pipe } = drain;
  const r = new Recording(
    'The water that the bed leaves under the emptied liner',
    'Midway between its pipes, or from the pipe to the edge of the floor, where it stands highest.',
  );
  tellLevels(r, site, measures, depth);
  drawnWater(
    r,
    a,
    basis,
    { of: 'year', way: measures.way, cutoff: measures.cutoff },
    0.9,
    input.outside ?? 0,
  );
  r.tell(halfPipe, { D: assumed(`inside of ${pipe.pipe.name}`) });
  const strata = [...strataOf(bed)].reverse();
  const under = BED_THICKNESS - strata.reduce((sum, { thickness }) => sum + thickness, 0);
  for (const asked of ['pipe', 'trial'])
    for (const [at] of strata.entries()) {
      const words = assumed(`layer ${at + 1} of the bed from below: common practice`);
      r.tell(layerPotential, {
        K: words,
        t: words,
        b: words,
        ...(at === 0 ? { g: assumed('nothing below') } : {}),
        ...(asked === 'trial'
          ? { h: 'by trial: until its moment is the one wanted' }
          : isMat(bed)
            ? { h: assumed('the middle of the mat') }
            : {}),
      });
    }
  const laid =
    layout.spacing === input.floorWidth ? {} : { s: assumed('distance of the pipes, as they are laid out') };
  r.tell(momentBetween, laid).tell(depthOver, { e: assumed('nought') });
  r.tell(headInBed, {
    u: assumed(
      under > 0 ? 'a mat lies on top of what is dug out' : 'the bed carries it from its underside up',
    ),
    w: 'by trial: until its moment is the one wanted',
  });
  r.tell(netOnLiner, {
    t: assumed(`a bed ${BED_THICKNESS} m thick: common practice`),
    b:
      (input.ballast ?? 0) > 0
        ? assumed('the slab of this answer, as a head')
        : assumed('nothing lies on it'),
  });
  const underside = r.use(bedUnderside, input.floor, BED_THICKNESS);
  const head = r.use(depthOver, input.outside ?? 0, underside, 0);
  const left = bedUnderFloor(bed, layout.spacing, head, layout.evenly, true, pipe.diameter, r.use);
  netUnderLiner(left, input.ballast ?? 0, BED_THICKNESS, r.use);
  r.same('report.drain.netHead.bed.between');
  return [r];
}

/** How far the water is lowered at the boundary and at houses. */
export function neighbourParts(a: Judged): Recording[] {
  const { site, basis, decision, drain } = a;
  const { measures, depth } = decision;
  if (!drain || !measures.drain) return [];
  const { level, outside } = drainInputOf(basis, measures, measures.drain, depth);
  const layers = rowsWords(site.ground.layers.map((l) => l.row.origin)) || 'pits.csv';
  return drain.lowering.map((place, i) => {
    const r = new Recording(
      `Lowering of the water next door: ${place.name}`,
      'At the likely permeability, then at its permeable end. The reach is where the water is back where it stood.',
    );
    const point =
      pointOf(site, 'boundary', place.name) ?? site.survey.levels.find((p) => p.point === place.name);
    const trial = 'by trial: until the water is back where it stood';
    r.tell(depthOver, { e: assumed('nought') });
    r.tell(flowDepth, {
      b: `${layers}: down to a tighter layer; ${flowDepth.parameters.b.max} m where none is known`,
      R: trial,
    });
    const rain = assumed('1 mm of rain a day gets down: our choice');
    for (const p of [trial, undefined, trial, undefined]) r.tell(waterRoundDrain, { q: rain, R: trial, p });
    r.tell(placeInReach, {
      x: point ? wayRow(point) : 'levels.csv: way to the line of the boundary points',
      R: trial,
    });
    const around = loweredGround(site, level, depth, r.use);
    const lowered = r.use(depthOver, outside, level, 0);
    const likely = loweringOf(place, lowered, around, false, r.use).lowered;
    for (const end of ['likely', 'high'] as const) {
      const of = r.steps.findLast((step) => step.title === loweredBy.title && step.result === likely[end]);
      if (of) r.equals.push({ path: `report.drain.lowering[${i}].lowered.${end}`, of, per: 1 });
    }
    return r;
  });
}
