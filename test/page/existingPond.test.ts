/** A pond that is there is not spoken to as one to be dug. */
import { describe, expect, test } from 'vitest';
import { briefDemo, withItem } from '../folder.js';
import { generatedGarden } from '../guard/generate.js';
import { printed } from '../steps/printed.js';
import { sweep } from '../sweep.js';

type Files = Record<string, string>;
const there = (files: Files) => withItem(files, 'pond.csv', 'state', 'existing');
/** Nobody looked at its water. */
const unread = ({ 'water.csv': _, 'weather.csv': __, 'heads.csv': ___, ...rest }: Files) => rest;

const PONDS: [string, Files][] = [
  ['unread', there(unread(briefDemo('clay-slope')))],
  ['over sand', there(generatedGarden(6).files)],
  ['protected', withItem(there(briefDemo('clay-hollow')), 'site.csv', 'protected_ground', 'yes')],
  ['old', briefDemo('old-garden-pond')],
  ...['clay-hollow', 'loam-terrace'].map((name): [string, Files] => [name, there(briefDemo(name))]),
  ...Array.from({ length: 12 }, (_, at): [string, Files] => [
    `garden ${at + 10}`,
    there(generatedGarden(at + 10).files),
  ]),
];
const NEW =
  /May I dig|[Bb]uy and dig|[Dd]ig (?:it )?(?:less|only|in [A-Z])|slump while digging|liner is bought|another place|(?:at|not here:) another spot|another spot is|do not dig here|Not at this spot|No pond is to be dug|depth worth digging|Dug as wished|for the pond as wished|Yes, [\d.]+ m deep/g;

describe.each(sweep(PONDS, 2))('%s', (_, files) => {
  test('its page and card', () => {
    const { text, card } = printed(files, 16);
    for (const units of ['metric', 'us'] as const)
      expect(`${text(units)}\n${card(units)}`.match(NEW) ?? []).toEqual([]);
  });
});

test('a pond to be dug is', () => {
  expect(printed(unread(briefDemo('clay-slope')), 16).text('metric')).toMatch(NEW);
});
