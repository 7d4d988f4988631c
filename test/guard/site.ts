/** A garden as the guard sees it: the survey's own numbers on one datum, nothing simulated. */
import { parseSurvey, type Survey } from '../../lib/survey/index.js';

/** A logged layer; depths m below the lowest ground at the rim. */
export interface Layer {
  pit: string;
  top: number;
  bottom: number;
  texture: string;
  structure: string;
  consistency: string;
  /** undrained, Pa */
  strength?: number;
}

/** A thing beside the pond: m from its edge, level m above the datum. */
export interface Beside {
  name: string;
  role: string;
  distance: number;
  level: number;
}

/** Water that the fill of a ring gives up, a share of its room: the small end. Common practice. */
const GIVES_UP = { clay: 0.03, topsoil: 0.1, sand: 0.15, gravel: 0.3 };

export interface GuardSite {
  survey: Survey;
  datum: number;
  layers: Layer[];
  pond: {
    full: number;
    depth: number;
    slope: number;
    length: number;
    width: number;
    /** dug wider and filled back, m; where that ends, m above the datum; share of its room the fill gives up */
    ring: number;
    ringEnds: number;
    ringGives: number;
    bedding: number;
    /** head held by what lies on the floor in every option, m: as if all of it were concrete */
    onTheFloor: number;
    margin: number;
    highestRaise: number;
    months: number[];
    days: number;
    accepted: number;
    existing: boolean;
  };
  outlets: (Beside & { flood?: number })[];
  houses: Beside[];
  footings: Beside[];
  /** ground at a pit above the datum, 0 where it was not levelled */
  groundAt(pit: string): number;
}

const ALL_YEAR = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];

/** Reads the files as any user of the CSVs would; what is absent takes the default that the contract names. */
export function guardSite(files: Record<string, string | Uint8Array>): GuardSite {
  const survey = parseSurvey(files, { name: 'guarded' });
  const { levels, pond } = survey;
  const of = (...roles: string[]) => levels.filter(({ role }) => roles.includes(role));
  const rims = of('rim').length > 0 ? of('rim') : of('spot').slice(0, 1);
  const datum = rims.length > 0 ? Math.min(...rims.map(({ level }) => level)) : 0;
  const pits = new Map(of('pit').map(({ point, level }) => [point, level - datum]));
  const groundAt = (pit: string) => pits.get(pit) ?? 0;
  const drawn = rims.filter(({ x }) => x !== undefined);
  const away = ({ distance, x = 0, y = 0 }: (typeof levels)[number]) =>
    distance ??
    (drawn.length > 0
      ? Math.min(...drawn.map((rim) => Math.hypot(x - (rim.x ?? 0), y - (rim.y ?? 0))))
      : Number.NaN);
  const beside = (...roles: string[]) =>
    of(...roles).map((p) => ({
      name: p.point,
      role: p.role,
      distance: away(p),
      level: p.level - datum,
    }));
  const floods = of('flood');
  const outlets = beside('outlet').map((outlet) => {
    const apart = (p: (typeof levels)[number]) => Math.abs(away(p) - outlet.distance);
    const near = floods.filter((p) => apart(p) <= 2).sort((a, b) => apart(a) - apart(b))[0];
    return { ...outlet, ...(near && { flood: near.level - datum }) };
  });
  const emptied = pond.emptied_in;
  const side = Math.sqrt(pond.area ?? 0);
  return {
    survey,
    datum,
    layers: survey.layers.map((l) => ({
      pit: l.pit,
      top: l.top - groundAt(l.pit),
      bottom: l.bottom - groundAt(l.pit),
      texture: l.texture ?? 'clay',
      structure: l.structure ?? '',
      consistency: l.consistency ?? '',
      ...(l.strength !== undefined && { strength: l.strength }),
    })),
    pond: {
      full: pond.full_level !== undefined ? pond.full_level - datum : (pond.water_above_rim_ground ?? 0),
      depth: pond.depth ?? 0,
      slope: pond.side_slope ?? 1,
      length: pond.length ?? side,
      width: pond.width ?? pond.length ?? side,
      ring: pond.ring_width ?? 0.15,
      ringEnds:
        -Math.min(pond.ring_depth ?? Number.POSITIVE_INFINITY, pond.depth ?? 0) -
        (pond.bedding === 'none' ? 0 : (pond.bedding_thickness ?? 0)),
      ringGives: GIVES_UP[pond.ring_fill ?? 'topsoil'],
      bedding: pond.bedding === 'none' ? 0 : (pond.bedding_thickness ?? 0),
      onTheFloor: pond.ballast === 'none' ? 0 : ((pond.ballast_thickness ?? 0) * (24 - 9.81)) / 9.81,
      margin: pond.margin ?? 0.1,
      highestRaise: pond.highest_raise ?? 0.3,
      months: emptied === 'never' ? [] : (emptied ?? ALL_YEAR),
      days: emptied === 'never' ? 0 : (pond.days_empty ?? 3),
      accepted: pond.accepted_risk ?? 0.02,
      existing: pond.state === 'existing',
    },
    outlets,
    houses: beside('house', 'neighbour-house'),
    footings: beside('footing'),
    groundAt,
  };
}
