/** The words a pit log uses for ground: USDA classes and what is no fine earth, structure, mottles, thumb test. */
export const USDA_CLASSES = [
  'sand',
  'loamy sand',
  'sandy loam',
  'loam',
  'silt loam',
  'silt',
  'sandy clay loam',
  'clay loam',
  'silty clay loam',
  'sandy clay',
  'silty clay',
  'clay',
] as const;
/** A USDA texture class. */
export type UsdaClass = (typeof USDA_CLASSES)[number];
/** Ground that has no texture class. */
export const OTHER_GROUND = ['peat', 'made ground', 'gravel', 'rock'] as const;
/** Ground that has no texture class. */
export type OtherGround = (typeof OTHER_GROUND)[number];
/** What a layer may be called. */
export type Texture = UsdaClass | OtherGround;
/** Structures of a soil, from the tightest. */
export const STRUCTURES = ['massive', 'blocky', 'cracked', 'rooted'] as const;
/** Structure of a soil. */
export type Structure = (typeof STRUCTURES)[number];
/** How much of a layer is mottled; `grey` where all of it is. */
export const MOTTLES = ['none', 'few', 'common', 'many', 'grey'] as const;
/** How much of a layer is mottled. */
export type Mottles = (typeof MOTTLES)[number];
/** Consistency by thumb, from the softest. */
export const CONSISTENCIES = ['very soft', 'soft', 'firm', 'stiff', 'very stiff', 'hard'] as const;
/** Consistency by thumb. */
export type Consistency = (typeof CONSISTENCIES)[number];
