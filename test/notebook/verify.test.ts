/** Whether a page was made from the files that lie in a folder. */
import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { judge } from '../../lib/decision/index.js';
import { verifyPage } from '../../lib/notebook/verify.js';
import { pageHtml } from '../../lib/page/index.js';
import { reportOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { parseSurvey } from '../../lib/survey/index.js';
import { passingFolder } from './notebooks.js';
import { start } from './program.js';

const FILES = {
  'pond.csv': '\ufeffitem,value,unit,note\r\ndepth,1,m,\r\nlength,4,m,\r\nwidth,3,m,\r\n',
  'heads.csv': 'place,month,depth_m\nsite,high,0.3\n',
  'site.csv': 'item,value,unit,note\nlatitude,52,deg,\n',
};

it('says of each file whether it is the same, and ends by that', () => {
  const folder = passingFolder();
  for (const [name, text] of Object.entries(FILES)) writeFileSync(join(folder, name), text);
  const page = join(passingFolder(), 'page.html');
  const bytes = Object.fromEntries(Object.entries(FILES).map(([name, text]) => [name, Buffer.from(text)]));
  const report = reportOf(judge(siteModel(parseSurvey(bytes, { name: 'test' }), { samples: 8 })));
  writeFileSync(page, pageHtml(report, { worked: [], version: '0.0.0' }));
  const says = () => Object.fromEntries(verifyPage(page, folder).map((row) => [row.file, row.says]));
  expect(says()).toEqual({ 'site.csv': 'same', 'pond.csv': 'same', 'heads.csv': 'same' });
  expect(start('verify', page, folder)).toMatchObject({ status: 0 });

  writeFileSync(join(folder, 'pond.csv'), `${FILES['pond.csv']}margin,0.1,m,\r\n`);
  rmSync(join(folder, 'heads.csv'));
  writeFileSync(join(folder, 'pits.csv'), 'a file in which nothing can be read');
  expect(says()).toEqual({
    'site.csv': 'same',
    'pond.csv': 'changed',
    'heads.csv': 'missing',
    'pits.csv': 'not on the page',
  });
  const { status, stdout } = start('verify', page, folder);
  expect(status).toBe(1);
  expect(stdout).toMatch(
    /^same +site\.csv\nchanged +pond\.csv\nnot on the page +pits\.csv\nmissing +heads\.csv\n$/,
  );
});

it('refuses a file that is no page, and asks for both', () => {
  const folder = passingFolder();
  const page = join(folder, 'pond.csv');
  writeFileSync(page, FILES['pond.csv']);
  expect(() => verifyPage(page, folder)).toThrow('no digests on');
  expect(start('verify', page)).toMatchObject({ status: 1, stderr: expect.stringContaining('missing DIR') });
});
