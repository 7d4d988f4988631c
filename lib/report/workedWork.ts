/** Everything to dig, to fill and to buy, and the hours by hand. */
import { BEFORE_DIGGING } from '../contract/index.js';
import type { Judged } from '../decision/index.js';
import { cutHeight, cutOut, dugTo, groundCut, ringDug, wholeHole } from '../digging/index.js';
import {
  BED_THICKNESS,
  BESIDE,
  drainDug,
  FILTER_THICKNESS,
  loosened,
  MAT_THICKNESS,
  MOUTH,
  pitVolume,
  quantitiesOf,
  runAtRim,
  SIDE_BLANKET,
  takeoffOf,
  trenchLining,
  trenchVolume,
  WASTE,
} from '../drain/index.js';
import { drainLevel, floorLevel } from '../heads/index.js';
import { CUTOFF } from '../options/index.js';
import {
  facingThickness,
  planWithin,
  sideInset,
  sidesArea,
  slabThickness,
  slopedSides,
} from '../uplift/index.js';
import { BANK, bankHeight, bankVolume, edgeLevel, edgeOut, sheetSide } from '../works/index.js';
import { handHours, pastPond, workOf } from './work.js';
import { pointOf, pointRow, sideRow, wayRow } from './workedBasics.js';
import { assumed, pondItem, pondRow, Recording } from './workedFrom.js';

const practice = (words: string) => assumed(`${words}: common practice`);

/** The build list, line by line, and its hours; none where nothing is to be dug yet. */
export function workPart(a: Judged): Recording[] {
  const { site, basis, decision, drain } = a;
  const { option, measures, depth } = decision;
  if (BEFORE_DIGGING.includes(option)) return [];
  const r = new Recording(
    'Everything to dig, to fill and to buy, and the hours by hand',
    'As measured, before it is rounded up to what is sold. Pieces are counted.',
  );
  tellPond(r, a);
  tellWorks(r, a);
  const laid = measures.drain;
  if (drain && laid && drain.quantities.length > 0) {
    tellDrain(r, a);
    sidesArea(site.pond.shape, depth, r.use);
    if (laid.kind === 'outlet') r.use(runAtRim, drainLevel(measures, floorLevel(depth, measures)), MOUTH);
    const takeoff = takeoffOf(drain, r.use);
    drainDug(takeoff, r.use);
    quantitiesOf(takeoff, r.use);
  }
  const { quantities, seconds } = workOf(decision.changed ?? basis, measures, depth, r.use);
  const same = (path: string, value: number) => {
    const of = r.steps.findLast(({ result }) => result === value);
    if (of) r.equals.push({ path, of, per: 1 });
  };
  quantities.forEach(({ amount, unit }, at) => {
    if (unit !== 'piece') same(`build.quantities.${at}.amount`, amount);
  });
  same('build.hours_by_hand', seconds / 3600);
  return r.steps.length > 0 ? [r] : [];
}

function tellPond(r: Recording, { site, decision }: Judged): void {
  const { pond, places } = site;
  const { shape, ring } = pond;
  const { measures: m, depth } = decision;
  const slope = { m: pondItem(site, 'side_slope', shape.sideSlope) };
  const raised = m.raise > 0 ? assumed('the rim is raised as recommended') : assumed('not raised');
  r.know(shape.length, 'm', sideRow(site, 'length', shape.length))
    .know(shape.width, 'm', sideRow(site, 'width', shape.width))
    .know(depth, 'm', depth === pond.depth ? pondItem(site, 'depth', depth) : assumed('depth of this answer'))
    .know(places.highRim, 'm', assumed('the highest rim of levels.csv, above its lowest'))
    .know(m.raise, 'm', raised)
    .know(shape.shelf?.depth ?? 0, 'm', shape.shelf ? pondRow(site, 'shelf_depth') : assumed('nought'))
    .know(ring.width / 2, 'm', ring.width > 0 ? pondRow(site, 'ring_width', 'half of it') : assumed('nought'))
    .know(0, 'm', assumed('nought'))
    .know(0, 'm³', assumed('nothing'))
    .tell(sideInset, {
      s: slope.m,
      w: shape.shelf ? pondRow(site, 'shelf_width', 'where it lies above that depth') : assumed('no shelf'),
    })
    .tell(planWithin, { f: pondRow(site, 'shape', shape.shape) })
    .tell(dugTo, {
      r: raised,
      ...(m.drain ? { b: assumed('the bed of a drain is counted with the drain') } : {}),
    })
    .tell(cutHeight, { r: raised })
    .tell(cutOut, slope)
    .tell(groundCut, slope)
    .tell(ringDug, {
      w: pondItem(site, 'ring_width', ring.width),
      ...(ring.depth === undefined ? {} : { t: pondItem(site, 'ring_depth', ring.depth) }),
    })
    .tell(wholeHole, ring.width === 0 ? { R: assumed('no ring') } : {})
    .tell(edgeLevel, {
      ...(site.survey.pond.full_level === undefined
        ? { z: pondItem(site, 'water_above_rim_ground', pond.fullLevel) }
        : {}),
      f: practice('freeboard of the liner'),
    })
    .tell(edgeOut, {
      ...slope,
      c: assumed('to the middle of the bank: half its top, our choice; nought to the edge itself'),
    })
    .tell(sheetSide, { ...slope, o: practice('0.3 m (1 ft) over each rim') })
    .tell(slopedSides, slope);
}

function tellWorks(r: Recording, { site, decision }: Judged): void {
  const { pond, places } = site;
  const { measures: m, depth } = decision;
  const share = (words: string) => practice(`${words}, as a share`);
  r.tell(bankHeight, { r: m.raise > 0 ? assumed('the rim is raised as recommended') : assumed('not raised') })
    .tell(bankVolume, {
      c: assumed(`top of a bank ${BANK.crest} m wide: our choice`),
      b: assumed(`outside of a bank ${BANK.slope} to 1: our choice`),
      m: pondItem(site, 'side_slope', pond.shape.sideSlope),
    })
    .tell(loosened, { s: practice('that loosened clay, or clay that has settled, takes more room') })
    .tell(handHours, {
      d: practice('what a person digs in an hour'),
      f: practice('what a person fills in an hour'),
    })
    .tell(facingThickness, { m: pondItem(site, 'side_slope', pond.shape.sideSlope) })
    .tell(slabThickness, {
      F: assumed('weight against weight'),
      h: assumed('the slab of this answer, as a head'),
      c: practice('unit weight of concrete'),
    })
    .know(WASTE.pipe, '-', share('waste of pipe'))
    .know(WASTE.granular, '-', share('waste of sand and stone'))
    .know(WASTE.fabric, '-', share('laps of fabric and mat'))
    .know(pond.bedding.thickness, 'm', pondItem(site, 'bedding_thickness', pond.bedding.thickness))
    .know(BED_THICKNESS, 'm', practice(`a bed, or a cap of clay, ${BED_THICKNESS} m thick`))
    .know(MOUTH, 'm', practice('a trench as wide as a spade and a half; pipe that lies shallow'));
  if (m.way === 'keptOut' || m.cutoff !== undefined)
    r.tell(pastPond, { x: assumed('past the pond on either side: our choice') });
  if (m.cutoff === undefined) return;
  const way = m.cutoffTo && pointOf(site, 'outlet', m.cutoffTo.name);
  if (m.cutoffTo) r.know(m.cutoffTo.distance, 'm', wayRow(way));
  const deep = Math.min(CUTOFF.depth, depth + places.highRim);
  r.know(deep, 'm', assumed(`a trench as deep as the pond, at most ${CUTOFF.depth} m: common practice`));
}

function tellDrain(r: Recording, { site, drain }: Judged): void {
  const { layout, end } = { ...drain!, ...drain!.input };
  const to =
    pointOf(site, end.kind === 'outlet' ? 'outlet' : 'discharge', end.name) ??
    pointOf(site, 'outlet', end.name);
  r.know(layout.length, 'm', assumed('pipe in the bed, as it is laid out'))
    .know(
      takeoffOf(drain!).sideBranch ?? 0,
      'm',
      assumed('half the width of the floor, to the long side by which it leaves'),
    )
    .know(end.distance, 'm', wayRow(to))
    .know(BESIDE, 'm', practice('a sump stands half a metre outside the rim'))
    .know(MAT_THICKNESS, 'm', practice('thickness of a drainage mat'))
    .know(FILTER_THICKNESS, 'm', practice('thickness of the filter sand'))
    .know(BED_THICKNESS - FILTER_THICKNESS, 'm', practice('stone of a bed above its filter sand'))
    .know(SIDE_BLANKET, 'm', practice('sand turned up behind the sides'))
    .tell(trenchVolume, { w: practice('a trench as wide as a spade and a half') })
    .tell(trenchLining, { w: practice('a trench as wide as a spade and a half') })
    .tell(pitVolume, { a: practice('side of a sump dug by hand') });
  if (end.kind === 'sump' && end.discharge !== undefined)
    r.know(end.discharge, 'm', pointRow(to, 'level', 'above the lowest rim'));
}
