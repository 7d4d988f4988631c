/** What a peg marks. */
export type PegOf =
  | 'rim'
  | 'crest'
  | 'shelf'
  | 'toe'
  | 'pipe-head'
  | 'pipe-round'
  | 'branch-head'
  | 'pipe-joins'
  | 'pipe-leaves-bed'
  | 'pipe-at-rim'
  | 'chainage'
  | 'mouth'
  | 'trench'
  | 'sump';

/** Where on what it marks. */
export interface PegPlace {
  /** of a box, counted round */
  corner?: 'A' | 'B' | 'C' | 'D';
  /** about the pond's middle from the end of its length that the drain leaves by, against the clock */
  angle_deg?: number;
  /** along the pipe from its head, m */
  chainage_m?: number;
  /** of the trench, looking down the pipe */
  edge?: 'left' | 'right';
}

/** A peg to be set out. Levels m above the lowest natural ground at the rim. */
export interface Peg extends PegPlace {
  number: number;
  of: PegOf;
  /** on the axes of the table, m */
  x_m: number;
  y_m: number;
  /** level distances from the two references, m */
  ties_m: [number, number];
  /** of the line from the first to the second, looking along it */
  side: 'left' | 'right';
  /** of what it marks: liner, invert, bottom of the sump */
  level_m: number;
  /** the same on the mark of levels.csv */
  mark_m: number;
  /** to which it is dug, or for a bank filled */
  dug_m: number;
  ground_m: number | null;
  /** plane through the rim points, nearest levelled ground, or a rim that is level; null: not known */
  ground_from: 'plane' | 'nearest' | 'level-rim' | null;
  /** ground less what is dug to, m; below 0 it is filled; null where the ground is not known */
  cut_m: number | null;
}

/** A line round the pond: a box or an ellipse about its middle. */
export interface PondLine {
  of: 'toe' | 'shelf' | 'shelf-back' | 'rim' | 'ring' | 'crest' | 'crest-outer' | 'bank-foot';
  half_length_m: number;
  half_width_m: number;
  level_m: number;
}

/** A point that distances are taped from. */
export interface TieReference {
  /** of the survey; null: a peg put there for it, A or B */
  name: string | null;
  x_m: number;
  y_m: number;
}

/** A point of the pipe; level of its invert. */
interface PipePoint {
  x_m: number;
  y_m: number;
  level_m: number;
  /** from the head of the pipe, m */
  chainage_m: number;
}

/** Where everything that is dug lies. */
export interface SettingOut {
  /** the surveyor's own x and y; `pond`: along its length and across from its middle, where the survey has none */
  axes: 'survey' | 'pond';
  /** level of the datum on the mark of levels.csv, m */
  datum_mark_m: number;
  middle: { x_m: number; y_m: number };
  /** direction of the pond's length */
  along: { x: number; y: number };
  /** farthest that a rim point of the survey lies off the rim set out here, m; null where none has a place */
  rim_off_m: number | null;
  references: [TieReference, TieReference];
  /** from the toe outwards */
  lines: PondLine[];
  pipe: {
    /** pipes in the bed, each as its points */
    bed: { x_m: number; y_m: number }[][];
    /** the longest way, from its head on, to mouth or sump */
    way: PipePoint[];
    /** where on it the bed ends */
    leaves_bed: number;
    /** fall of the run, and the least it should have, m/m */
    fall: number;
    least_fall: number;
    /** whether the survey says which way it goes */
    known_way: boolean;
    trench_width_m: number;
    sump: { x_m: number; y_m: number }[] | null;
  } | null;
  pegs: Peg[];
}
