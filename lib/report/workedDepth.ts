/** How deep it holds: the deepest of the depths judged, what it leaves in hand, and what the next one meets. */

import type { DepthCurve } from '../contract/index.js';
import { decidingSituations, type Situation } from '../contract/index.js';
import type { Judged } from '../decision/index.js';
import { digConditions, dugDepth, dugTo, sideUphill } from '../digging/index.js';
import { formula } from '../formula/index.js';
import { levelOfDepth, type Measures, NOTHING } from '../heads/index.js';
import { safeDepth } from '../options/index.js';
import { verdictAt } from '../reliability/index.js';
import { countedNote, depthNote, depthState } from '../text/chanceStepWords.js';
import { recordCounted } from './countedSteps.js';
import { tellLevels } from './workedBasics.js';
import { assumed, pondItem, Recording, YEARLY_HEADS } from './workedFrom.js';

/** From one depth to another. */
export const depthRoom = formula({
  title: 'From the depth that is dug to another that was judged',
  symbol: 'g',
  unit: 'm',
  expression: 's - d',
  parameters: {
    s: { meaning: 'depth judged', unit: 'm', min: 0, max: 10 },
    d: { meaning: 'depth that is dug', unit: 'm', min: 0, max: 10 },
  },
  compute: (s: number, d: number) => s - d,
  validity: 'both from the rim down',
  source: 'definition',
});

/** By how much a chance passes the one accepted. */
export const overAccepted = formula({
  title: 'What the trial leaves over the chance accepted: nought',
  symbol: 'e',
  unit: '-',
  expression: 'max(P - a, 0)',
  parameters: {
    P: { meaning: 'chance a year', unit: '-', min: 0, max: 1 },
    a: { meaning: 'chance accepted', unit: '-', min: 0, max: 1 },
  },
  compute: (P: number, a: number) => Math.max(P - a, 0),
  validity: 'at the deepest depth that holds; what else stands against a depth is told by name',
  source: 'definition',
});

/** The depths that hold as recommended, and with nothing done. */
export function depthParts(a: Judged, situations: Situation[]): Recording[] {
  const { options, curves, decision, advised } = a;
  const dug = decidingSituations(situations).some(({ of }) => of === 'recommended');
  const bare = options.findIndex(({ name }) => name === 'no-drain');
  const parts = dug ? depthPart(a, decision.measures, advised, true) : [];
  return dug && decision.measures === NOTHING
    ? parts
    : [...depthPart(a, NOTHING, curves[bare]!, false), ...parts];
}

function depthPart(a: Judged, m: Measures, curve: DepthCurve, advised: boolean): Recording[] {
  const { basis, site, decision } = a;
  const wished = site.pond.depth;
  const { depth } = safeDepth(curve, { depth: wished, safe: verdictAt(basis, m, wished).safe });
  const safe = depth ?? curve.depth_m.at(-1)!;
  if (safe <= 0) return [];
  const next = depth === null ? -1 : curve.depth_m.findIndex((each) => each > safe);
  const fails = next < 0 ? undefined : curve.depth_m[next]!;
  const governs = next < 0 ? 'none' : curve.governs[next]!;
  const r = new Recording(
    `How deep it holds${advised ? ' as recommended' : ' with nothing done'}`,
    `${depthNote(governs)} ${countedNote(YEARLY_HEADS, m.drain !== undefined || m.cutoff !== undefined)}`,
  );
  tellLevels(r, site, m, site.pond.depth);
  const trial = 'by trial: the deepest of the depths judged that holds with all above it';
  const trialNext = 'by trial: the next of the depths judged';
  const wish =
    decision.depth === site.pond.depth
      ? pondItem(site, 'depth', decision.depth)
      : assumed('depth of this answer');
  const prefix = advised && m !== NOTHING ? '' : 'undone';
  const count = (at: number, which: 'safe' | 'next') => {
    const { chance } = verdictAt(basis, m, at);
    recordCounted(r, basis, chance.counted('any'), { name: prefix, ...depthState(which) });
    return r.steps.at(-1)!.result;
  };
  r.tell(levelOfDepth, { d: trial });
  r.use(levelOfDepth, safe);
  if (advised) {
    r.tell(depthRoom, { s: trial, d: wish });
    r.use(depthRoom, safe, decision.depth);
  }
  r.tell(overAccepted, { a: pondItem(site, 'accepted_risk', site.pond.acceptedRisk) });
  r.use(overAccepted, count(safe, 'safe'), site.pond.acceptedRisk);
  if (fails === undefined) return [r];
  r.tell(levelOfDepth, { d: trialNext });
  r.use(levelOfDepth, fails);
  if (advised) {
    r.tell(depthRoom, { s: trialNext, d: wish });
    r.use(depthRoom, fails, decision.depth);
  }
  if (governs.startsWith('lift-')) count(fails, 'next');
  else if (digConditions(site, basis.dig, m, fails).some(({ code }) => code === 'laid-back')) {
    r.know(site.places.highRim, 'm', assumed('the highest rim of levels.csv, above its lowest'));
    r.know(fails, 'm', trialNext);
    const told = r.told.find(([formula]) => formula.title === dugTo.title)![1];
    r.retell(dugTo, { ...told, d: trialNext });
    sideUphill(site, dugDepth(site, m, fails, r.use), r.use);
  }
  return [r];
}
