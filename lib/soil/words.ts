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
export type UsdaClass = (typeof USDA_CLASSES)[number];
export const OTHER_GROUND = ['peat', 'made ground', 'gravel', 'rock'] as const;
export type OtherGround = (typeof OTHER_GROUND)[number];
export type Texture = UsdaClass | OtherGround;
export const STRUCTURES = ['massive', 'blocky', 'cracked', 'rooted'] as const;
export type Structure = (typeof STRUCTURES)[number];
export const MOTTLES = ['none', 'few', 'common', 'many', 'grey'] as const;
export type Mottles = (typeof MOTTLES)[number];
export const CONSISTENCIES = ['very soft', 'soft', 'firm', 'stiff', 'very stiff', 'hard'] as const;
export type Consistency = (typeof CONSISTENCIES)[number];
