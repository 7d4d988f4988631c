/** Rules of a country for whoever digs, with what of them was read. */

import type { RulesName } from '../site/index.js';

/** Heading and points of a country's rules for digging. */
interface DiggingLaw {
  title: string;
  points: readonly string[];
  /** what decides about the sides of a hole, as a sentence */
  decides: string;
}

const SERVICES = 'Have buried services located before you dig.';

const LAWS: Readonly<Record<RulesName, DiggingLaw>> = {
  us: {
    title: 'Rules for digging in the United States',
    points: [
      'Call 811 before you dig. Private lines need a locator of your own.',
      'At work, 29 CFR 1926 Subpart P holds. From 5 ft (1.5 m) the sides are sloped, shored or shielded; below that too, unless a competent person has looked and found no sign of a cave-in (1926.652(a)(1)).',
      'A competent person looks at the hole every day before work, and after rain (1926.651(k)(1)).',
      'In a trench 4 ft (1.2 m) deep or more there is a ladder, stair or ramp within 25 ft (7.6 m) (1926.651(c)(2)).',
      'Spoil and tools stay 2 ft (0.6 m) or more from the edge (1926.651(j)(2)).',
      'These rules bind employers. Take them for your own digging as well. A state may ask for more. They were read as quoted on the web: check the text in force.',
    ],
    decides: 'Your local rules decide.',
  },
  gb: {
    title: 'Rules for digging in the United Kingdom',
    points: [
      'At work, the Construction (Design and Management) Regulations 2015 hold: check regulation 22, excavations, in force. Northern Ireland has regulations of its own.',
      'No depth is safe as such. The Health and Safety Executive says that no ground can be relied upon to stand unsupported in all circumstances.',
      'A competent person looks at supports and sloped sides at the start of the shift. Nobody works in the hole until it is safe.',
      SERVICES,
    ],
    decides:
      'In the United Kingdom no depth is safe as such: regulation 22 of the Construction (Design and Management) Regulations 2015 decides at work. Northern Ireland has its own.',
  },
  ie: {
    title: 'Rules for digging in Ireland',
    points: [
      'At work, the Safety, Health and Welfare at Work (Construction) Regulations 2013 (S.I. No. 291 of 2013) hold: check the part on excavations, in force.',
      SERVICES,
    ],
    decides:
      'In Ireland the Safety, Health and Welfare at Work (Construction) Regulations 2013 decide at work.',
  },
  en: {
    title: 'Rules for digging in your country',
    points: [
      'At work, national rules hold for the sides of a hole, for who may look at them, and for spoil and ladders. Look them up before you dig: none is named here.',
      SERVICES,
    ],
    decides: 'The law of your country decides: look it up before you dig.',
  },
};

/**
 * The rules for digging that go with the rules of the sheet.
 * @param rules - of the country
 * @returns a heading, and its points
 */
export function diggingLaw(rules: RulesName): DiggingLaw {
  return LAWS[rules];
}
