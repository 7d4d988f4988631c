/** Words of the trade that the answer uses, each in one sentence for somebody who never dug a pond. */

/** A word and what it means. */
export interface GlossaryEntry {
  word: string;
  /** how it may also be written: of several */
  plural?: string;
  meaning: string;
}

/** In the order of the alphabet. */
export const GLOSSARY: readonly GlossaryEntry[] = [
  {
    word: 'animal guard',
    meaning: 'A grid over the end of the pipe that keeps rats and frogs out of it.',
  },
  {
    word: 'bed',
    plural: 'beds',
    meaning: 'The layer of sand and gravel under the liner that leads water to the pipe of the drain.',
  },
  {
    word: 'brim',
    meaning: 'The height at which the pond is full and begins to run over.',
  },
  { word: 'design storm', meaning: 'The heavy rain that everything built is reckoned for.' },
  {
    word: 'dip pipe',
    plural: 'dip pipes',
    meaning:
      'An upright pipe beside the liner, open at its foot, in which a tape shows how high the water stands under the pond.',
  },
  {
    word: 'drain',
    plural: 'drains',
    meaning: 'Gravel and a pipe under the pond that lead water away before it can lift the liner.',
  },
  {
    word: 'flap',
    meaning: 'A lid at the end of a pipe that lets water out and shuts when water would come in.',
  },
  { word: 'fleece', meaning: 'A thick felt under the liner that keeps stones from piercing it.' },
  {
    word: 'footing',
    plural: 'footings',
    meaning: 'The buried foot of a wall or house that carries its weight.',
  },
  {
    word: 'inspection pipe',
    plural: 'inspection pipes',
    meaning: 'A pipe up to the surface through which the drain can be looked into and flushed.',
  },
  {
    word: 'liner',
    meaning:
      'The waterproof sheet that holds the water of the pond; it lifts where water under it stands higher than water on it.',
  },
  {
    word: 'middle year',
    meaning: 'A year that half of all years are wetter than, and half are drier.',
  },
  {
    word: 'outlet',
    plural: 'outlets',
    meaning: 'The place where the pipe of a drain ends and its water comes out.',
  },
  { word: 'permeable', meaning: 'Said of ground that lets water through.' },
  {
    word: 'regulator',
    meaning: 'Whoever looks after protected ground by law; the council knows who that is.',
  },
  {
    word: 'rim',
    plural: 'rims',
    meaning: 'The edge of the pond, all the way round, where it meets the ground.',
  },
  {
    word: 'ring',
    meaning: 'The strip of loose earth filled back around the liner, in which rain collects.',
  },
  { word: 'run-off', meaning: 'Rain that runs over the ground instead of soaking in.' },
  {
    word: 'slab',
    plural: 'slabs',
    meaning: 'A plate of concrete on the liner that holds it down by its weight.',
  },
  { word: 'spoil', meaning: 'The earth that comes out of the hole.' },
  {
    word: 'standpipe',
    plural: 'standpipes',
    meaning:
      'An upright pipe in a hole of its own, open at its foot and sealed with clay above, in which a tape shows how high the water in the ground stands.',
  },
  {
    word: 'sump',
    meaning: 'A pit beside the pond in which the drain ends and from which a pump lifts the water.',
  },
  {
    word: 'uphill wall',
    meaning: 'The side of the pond towards the higher ground, behind which water stands highest.',
  },
  {
    word: 'water table',
    meaning: 'The height to which water fills the ground; it comes up in winter and goes down in summer.',
  },
  {
    word: 'wet half-year',
    meaning:
      'The months in which more rain falls than plants and sun take, so that the water in the ground comes up.',
  },
];
