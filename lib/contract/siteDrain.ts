import type {
  Discharge,
  Drain,
  Ends,
  EnvelopeVerdict,
  governingSource,
  Lowering,
  OutletWorks,
  SoakawayVerdict,
  SourceInflow,
  Task,
} from '../drain/index.js';
import type { Assumption } from '../site/index.js';

/** A drain for a site: designed, with where its water comes from and what it does to others. */
export interface SiteDrain extends Drain {
  sources: SourceInflow[];
  governing: ReturnType<typeof governingSource>;
  /** all sources at their low, likely and high end, m³/s */
  ends: Ends;
  /** every bed the merchant could deliver, judged on this soil */
  verdicts: EnvelopeVerdict[];
  /** cover, frost, erosion and backwater of the run; absent for a sump */
  works?: OutletWorks;
  soakaway: SoakawayVerdict;
  /** at the boundary and at houses */
  lowering: Lowering[];
  discharge: Discharge;
  /** m³/s for ever out of permeable ground, and the distance at which it is felt; absent on clay */
  endless?: { flow: number; felt: number };
  /** January to December: hours without power until water stands at the liner, one year in ten; null: a year at least */
  powerCut?: (number | null)[];
  maintenance: Task[];
  /** what the survey does not say and was assumed for it */
  assumptions: Assumption[];
}
