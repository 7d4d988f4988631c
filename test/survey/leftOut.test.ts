import { expect, test } from 'vitest';
import { noticeLines } from '../../lib/survey/index.js';
import { warnings } from './folder.js';

test('what was given and not used comes first, each with what it would take', () => {
  const lines = noticeLines(
    warnings({
      'heads.csv': 'place,month,depth_m\n#site,2,0.4\nsite,high,0.3\n',
      'notes.csv': 'x',
      'soakage.csv': 'pit,test,minutes,depth_to_water_cm\nP1,1,0,30\n',
      'pits.csv': 'pit,top_m,bottom_m,texture\nP1,0,2.5,heavy clay\n',
    }),
  );
  expect(lines[0]).toBe('Given and not used:');
  const noticed = lines.indexOf('Noticed:');
  const left = lines.slice(1, noticed).join('\n');
  for (const told of ["Take the '#' away", 'notes.csv', 'Look again after a time'])
    expect(left).toContain(told);
  expect(lines.slice(noticed + 1)).toEqual(["  pits.csv:2 texture: 'heavy clay' is read as clay"]);
});

test('items left empty stand on one line', () => {
  const pond = `item,value,unit\nlength,4,m\nwidth,3,m\ndepth,1,m\n${['margin', 'bulge', 'liner', 'ballast']
    .map((item) => `${item},,\n`)
    .join('')}`;
  expect(noticeLines(warnings({ 'pond.csv': pond }))).toEqual([
    'Noticed:',
    '  pond.csv: 4 items have no value, so the survey does not say them: margin, bulge, liner, ballast',
  ]);
  expect(noticeLines([])).toEqual([]);
});
