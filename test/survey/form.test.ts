/** Files as such: which are there, how they are encoded, how their rows hold together. */

import { describe, expect, test } from 'vitest';
import { formatProblem, SurveyError } from '../../lib/survey/index.js';
import { GOOD, problem, problems, read, warnings } from './folder.js';

test('a good survey has neither problem nor warning', () => {
  const survey = read();
  expect(survey.warnings).toEqual([]);
  expect(survey.name).toBe('lawn');
  expect(survey.files).toEqual(['site.csv', 'pond.csv', 'pits.csv', 'heads.csv']);
});

describe('missing and unknown files', () => {
  test('no pond.csv', () => {
    expect(problem({ 'pond.csv': undefined })).toMatchObject({
      code: 'missing-file',
      file: 'pond.csv',
      remedy: 'Add it, with at least its depth, length and width.',
    });
  });

  test('a name nearly right is told, and the remedy is to rename it', () => {
    expect(problem({ 'pond.csv': undefined, 'pnod.csv': GOOD['pond.csv'] })).toMatchObject({
      code: 'missing-file',
      remedy: "Rename 'pnod.csv' to 'pond.csv'.",
    });
  });

  test.each(['Pond.CSV', 'pond.csv.txt', 'pond (1).csv', 'pond - Copy.csv', 'POND copy.csv'])(
    "'%s' is pond.csv, which is told",
    (name) => {
      const survey = read({ 'pond.csv': undefined, [name]: GOOD['pond.csv'] });
      expect(survey.warnings).toEqual([
        { file: 'pond.csv', code: 'read-as', message: `the file '${name}' is read as pond.csv` },
      ]);
      expect(survey.digest).toBe(read().digest);
    },
  );

  test('two files of one name are refused, both named', () => {
    expect(problem({ 'pond (1).csv': GOOD['pond.csv'].replace('depth,1', 'depth,2') })).toMatchObject({
      code: 'duplicate-file',
      message: expect.stringContaining("'pond (1).csv' and 'pond.csv'"),
      remedy: expect.stringContaining('Keep the one that is right'),
    });
  });

  test('what is filled in and left in later/ is told; what is empty there is not', () => {
    const heads = 'place,month,depth_m\n# a remark,,\n';
    expect(warnings({ 'later/heads.csv': `${heads}1,,\n`, 'later/notes.csv': `${heads}site,3,1\n` })).toEqual(
      [],
    );
    expect(warnings({ 'later/heads.csv': `${heads}site,3,0.2\n` })).toEqual([
      {
        file: 'heads.csv',
        code: 'left-in-later',
        message: "'later/heads.csv' holds 1 row and was not read: move it up, next to pond.csv",
      },
    ]);
  });

  test('neither pits nor heads', () => {
    expect(problem({ 'pits.csv': undefined, 'heads.csv': undefined })).toMatchObject({
      code: 'missing-file',
      file: 'pits.csv',
      remedy: expect.stringContaining('heads.csv'),
    });
  });

  test('one of pits and heads is enough', () => {
    expect(read({ 'pits.csv': undefined }).heads).toHaveLength(1);
    expect(read({ 'heads.csv': undefined }).layers).toHaveLength(2);
  });

  test('an unknown file is a warning; photos, read-me files and hidden files are none', () => {
    expect(warnings({ 'levls.csv': 'x' })).toEqual([
      {
        file: 'levls.csv',
        code: 'unknown-file',
        message: expect.stringContaining("did you mean 'levels.csv'?"),
      },
    ]);
    expect(
      warnings({ 'P1.jpg': new Uint8Array([0xff]), 'README.txt': '', 'notes.md': '', '.hidden': '' }),
    ).toEqual([]);
  });

  test.each(['', '\n\n', '\ufeff', '# only a remark\n'])('an empty file %j', (content) => {
    expect(problem({ 'levels.csv': content })).toMatchObject({
      code: 'empty-file',
      file: 'levels.csv',
      remedy: 'Fill it in, or take the file out of the folder.',
    });
  });

  test('a header and nothing else', () => {
    expect(problem({ 'levels.csv': '\npoint,role,level_m\n' })).toMatchObject({
      code: 'empty-file',
      line: 2,
    });
  });
});

describe('encoding', () => {
  const bytes = (text: string) => new TextEncoder().encode(text);

  test('byte-order mark, CRLF, CR, blank lines, remarks and quotes change nothing', () => {
    const plain = read().layers;
    const text =
      '\ufeff# dug by hand\r\n\r\npit,top_m,bottom_m,texture\r\nP1,0,0.25,"clay loam"\r\n,,,\r\n P1 , 0.25 ,"2.5",clay\r\n';
    const values = (layers: typeof plain) => layers.map(({ origin, ...rest }) => rest);
    for (const content of [text, bytes(text), text.replaceAll('\r\n', '\r')]) {
      const layers = read({ 'pits.csv': content }).layers;
      expect(values(layers)).toEqual(values(plain));
      expect(layers.map((layer) => layer.origin.line)).toEqual([4, 6]);
    }
  });

  test('a quoted cell may hold commas, quotes and line breaks, which become spaces; later lines keep their number', () => {
    const layers = read({
      'pits.csv': 'pit,top_m,bottom_m,note\nP1,0,0.25,"wet, ""grey""\nand soft"\nP1,0.25,2.5,\n',
    }).layers;
    expect(layers[0]).toMatchObject({ note: 'wet, "grey" and soft', origin: { line: 2 } });
    expect(layers[1]?.origin.line).toBe(4);
  });

  test.each([
    ['little-endian', true],
    ['big-endian', false],
  ])('UTF-16 that says so, %s', (_name, little) => {
    const text = `\ufeff${GOOD['pits.csv']}`;
    const units = new DataView(new ArrayBuffer(2 * text.length));
    for (let at = 0; at < text.length; at++) units.setUint16(2 * at, text.charCodeAt(at), little);
    expect(read({ 'pits.csv': new Uint8Array(units.buffer) }).layers).toEqual(read().layers);
    expect(problem({ 'pits.csv': new Uint8Array(units.buffer).subarray(0, 31) })).toMatchObject({
      code: 'not-utf8',
      file: 'pits.csv',
      message: expect.stringContaining('UTF-16'),
      remedy: expect.stringContaining('UTF-8'),
    });
  });

  test('Latin-1: the line of the first byte that is not UTF-8', () => {
    const latin = Uint8Array.from('pit,top_m,bottom_m,note\nP1,0,1,ok\nP1,1,2,½ wet\n', (sign) =>
      sign.charCodeAt(0),
    );
    expect(problem({ 'pits.csv': latin })).toMatchObject({
      code: 'not-utf8',
      line: 3,
      remedy: expect.stringContaining('UTF-8'),
    });
  });

  test('NUL bytes, and characters lost before', () => {
    expect(problem({ 'pits.csv': 'pit,top_m\nP\0,1\n' })).toMatchObject({ code: 'not-text', line: 2 });
    expect(problem({ 'pits.csv': 'pit,top_m\nP1,1\nP\ufffd,1\n' })).toMatchObject({
      code: 'not-utf8',
      line: 3,
    });
  });
});

describe('rows and quotes', () => {
  test('more cells than the header: a decimal comma', () => {
    expect(problem({ 'heads.csv': 'place,month,depth_m\nsite,high,0,3\n' })).toMatchObject({
      code: 'ragged-row',
      file: 'heads.csv',
      line: 2,
      found: '4',
      remedy: expect.stringContaining('decimals with a point'),
    });
  });

  test('fewer cells than the header', () => {
    expect(problem({ 'heads.csv': 'place,month,depth_m\nsite,high,0.3\nsite,3\n' })).toMatchObject({
      code: 'ragged-row',
      line: 3,
      remedy: expect.stringContaining('missing commas'),
    });
  });

  test('two separators in one header', () => {
    expect(problem({ 'heads.csv': 'place;month,depth_m\nsite;high;0,3\n' })).toMatchObject({
      code: 'wrong-separator',
      line: 1,
      message: expect.stringContaining('commas and semicolons'),
      remedy: expect.stringContaining('Keep one of them'),
    });
  });

  test('a header in one cell', () => {
    expect(problem({ 'heads.csv': '"place,month,depth_m"\n"site,high,0.3"\n' })).toMatchObject({
      code: 'wrong-separator',
      line: 1,
      remedy: expect.stringContaining('text to columns'),
    });
  });

  test('a row may end before its remarks, not before a number', () => {
    const text = 'pit,top_m,bottom_m,texture,photo,note\nP1,0,0.25,clay loam\nP1,0.25,2.5,clay,,,,\n';
    expect(read({ 'pits.csv': text }).layers).toHaveLength(2);
    expect(problem({ 'pits.csv': `${text}P1,2.5,3\n` })).toMatchObject({ code: 'ragged-row', line: 4 });
  });

  test('a quote never closed', () => {
    expect(
      problem({ 'heads.csv': 'place,month,depth_m\nsite,1,0.3\nsite,"2,0.3\nsite,3,0.3\n' }),
    ).toMatchObject({
      code: 'invalid-quotes',
      line: 3,
      remedy: expect.stringContaining('double'),
    });
  });

  test('feet and inches with their signs, quoted or not', () => {
    const heads = read({
      'heads.csv': `place,month,depth_ft\nsite,1,3' 2"\nsite,2,"3' 2"""\nsite,3,38"\n`,
    }).heads;
    expect(heads.map((head) => head.depth)).toEqual([1, 2, 3].map(() => expect.closeTo(0.9652, 12)));
  });

  test("a row behind '#' is not lost in silence", () => {
    expect(
      warnings({
        'heads.csv': 'place,month,depth_m\n# from the old well, by hand\nsite,high,0.3\n#2,3,0.4\n',
      }),
    ).toEqual([
      { file: 'heads.csv', line: 4, code: 'commented-row', message: expect.stringContaining("'#'") },
    ]);
  });
});

describe('everything at once', () => {
  const broken = {
    'pond.csv': 'item,value,unit,note\nlength,4,m,\nwidth,3,,\ndepth,9,m,\nlenght,3,m,\n',
    'pits.csv': 'pit,top_m,bottom_m,colour\nP1,0,0.25,red\nP1,0.5,0.3,red\n',
    'heads.csv': 'place;month,depth_m\nsite;1\n',
  };

  test('every problem of every file, the farthest-reaching first, then by file and line', () => {
    expect(problems(broken).map(({ file, line, column, code }) => [file, line, column, code])).toEqual([
      ['heads.csv', 1, undefined, 'wrong-separator'],
      ['pond.csv', 5, 'item', 'unknown-item'],
      ['pits.csv', 1, 'colour', 'unknown-column'],
      ['pits.csv', 3, 'bottom_m', 'layer-upside-down'],
      ['pond.csv', 3, 'value', 'missing-unit'],
      ['pond.csv', 4, 'value', 'outside-range'],
    ]);
  });

  test('the report says what each group costs, and what was noticed besides', () => {
    const { message } = new SurveyError(problems(broken), [
      { code: 'layer-gap', file: 'pits.csv', line: 7, message: 'a gap' },
    ]);
    const headings = message.split('\n').filter((line) => line.endsWith(':'));
    expect(headings).toEqual([
      'a whole file is lost:',
      'a column, or a fact the answer needs, is lost:',
      'rows contradict each other or are lost:',
      'a single cell is lost:',
      'noticed besides:',
    ]);
    expect(message).toMatch(/pits\.csv:7: a gap$/);
  });

  test('each is a line with place, finding and remedy, and the error says all', () => {
    const all = problems(broken);
    expect(formatProblem(all[3]!)).toBe(
      "pits.csv:3 bottom_m: invalid '0.3' - a layer must end deeper than its top, '0.5'. Expected: more than 0.5. Write depths downwards from the ground; swap the two if they were exchanged.",
    );
    expect(
      formatProblem({
        file: 'pond.csv',
        code: 'missing-file',
        message: "missing file 'pond.csv'",
        remedy: 'Add it.',
      }),
    ).toBe("pond.csv: missing file 'pond.csv'. Add it.");
    for (const one of all) {
      expect(one.message).toMatch(/^(invalid|unknown|missing|outside) /);
      expect(one.remedy).toMatch(/[.?]$/);
      expect(new SurveyError(all, []).message).toContain(formatProblem(one));
    }
  });
});

describe('digest', () => {
  test('the same bytes give the same digest, in whatever order and whether text or bytes', () => {
    const { digest } = read();
    expect(digest).toMatch(/^[0-9a-f]{64}$/);
    const turned = Object.fromEntries(
      Object.entries(GOOD)
        .reverse()
        .map(([name, text]) => [name, new TextEncoder().encode(text)]),
    );
    expect(read(turned).digest).toBe(digest);
    expect(read({ 'P1.jpg': 'a photo is not read' }).digest).toBe(digest);
    expect(read({ 'pond.csv': `${GOOD['pond.csv']}\n` }).digest).not.toBe(digest);
  });
});
