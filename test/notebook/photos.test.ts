/** Photos become pixels and are encoded anew: the picture stays, all that came with it does not. */
import { mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { deflateSync } from 'node:zlib';
import jpeg from 'jpeg-js';
import { describe, expect, it } from 'vitest';
import { LARGEST_PHOTO, madeAnew, photosOf, photoWarnings, pictureOf } from '../../lib/notebook/photos.js';
import type { Pixels } from '../../lib/notebook/pixels.js';
import { readSurvey } from '../../lib/notebook/readSurvey.js';
import { briefDemo, surveyOf } from '../folder.js';
import { Dice } from '../survey/generated.js';
import { PROJECT, passingFolder } from './notebooks.js';

const PHOTOS = join(PROJECT, 'test', 'fixtures', 'photos');
const fixture = (name: string) => readFileSync(join(PHOTOS, name));
const anew = (file: Buffer) => madeAnew(pictureOf(file));

/** What `photos.py` drew: red grows to the right, green downwards, blue stays. */
type Sign = [red: number, green: number, blue: number];
const drawn = (x: number, y: number): Sign => [(255 * x) / 95, (255 * y) / 63, 128];
const greyOf = ([red, green, blue]: Sign): Sign => {
  // As Pillow does it (ITU-R BT.601).
  const light = 0.299 * red + 0.587 * green + 0.114 * blue;
  return [light, light, light];
};

/** Largest difference of any pixel from what was drawn. */
function farthest({ width, height, data }: Pixels, picture: (x: number, y: number) => Sign): number {
  expect([width, height]).toEqual([96, 64]);
  let most = 0;
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++)
      for (const [channel, light] of picture(x, y).entries())
        most = Math.max(most, Math.abs(data[4 * (y * width + x) + channel]! - light));
  return most;
}

describe('the picture stays', () => {
  const jpegs = readdirSync(PHOTOS).filter((name) => /^(baseline|progressive|turned-\d)\.jpg$/.test(name));
  expect(jpegs).toHaveLength(9);

  it.each(jpegs)('%s, as libjpeg wrote it', (name) => {
    // Colours are coded at half the resolution, which shows at the edge.
    expect(farthest(pictureOf(fixture(name)).pixels(), drawn)).toBeLessThan(20);
    const again = jpeg.decode(anew(fixture(name)), { useTArray: true });
    expect(farthest(again, drawn)).toBeLessThan(25);
  });

  it('grey.jpg', () => {
    expect(farthest(pictureOf(fixture('grey.jpg')).pixels(), (x, y) => greyOf(drawn(x, y)))).toBeLessThan(6);
  });

  it.each([
    ['colour.png', drawn, 0.51],
    ['grey.png', (x: number, y: number) => greyOf(drawn(x, y)), 1.01],
    ['palette.png', drawn, 40],
    [
      'seen-through.png',
      (x: number, y: number) => drawn(x, y).map((c) => 255 + (c - 255) * (128 / 255)) as Sign,
      1.01,
    ],
    ['sixteen.png', (x: number) => Array(3).fill((255 * x) / 95) as Sign, 1.01],
  ] as const)('%s, as zlib packed it', (name, picture, most) => {
    expect(farthest(pictureOf(fixture(name)).pixels(), picture)).toBeLessThan(most);
  });

  it('bits.png is black and white where Pillow made it so', () => {
    const { width, data } = pictureOf(fixture('bits.png')).pixels();
    const at = (x: number, y: number) => data[4 * (y * width + x)];
    expect([at(0, 0), at(95, 63), at(40, 5), at(60, 60)]).toEqual([0, 255, 0, 255]);
    expect(new Set(data)).toEqual(new Set([0, 255]));
  });
});

/** A piece of a JPEG. */
const segment = (marker: number, body: Buffer) =>
  Buffer.concat([Buffer.from([0xff, marker, (body.length + 2) >> 8, (body.length + 2) & 255]), body]);
/** A chunk of a PNG, its checksum from the file it was taken from or made by `crc`. */
const chunk = (type: string, body: Buffer) => {
  const content = Buffer.concat([Buffer.from(type, 'latin1'), body]);
  const ends = Buffer.alloc(8);
  ends.writeUInt32BE(body.length, 0);
  ends.writeUInt32BE(crc(content), 4);
  return Buffer.concat([ends.subarray(0, 4), content, ends.subarray(4)]);
};
/** CRC-32 bit by bit, as annex D of the standard writes it. */
function crc(bytes: Buffer): number {
  let sum = 0xffffffff;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit++) sum = sum & 1 ? (sum >>> 1) ^ 0xedb88320 : sum >>> 1;
  }
  return (sum ^ 0xffffffff) >>> 0;
}

const SECRET = 'Owner of no camera, 51.0342 N';

describe('all that came with it does not', () => {
  const photo = fixture('baseline.jpg');
  const secret = Buffer.from(SECRET);
  /** Everywhere a program may lay something into a JPEG. */
  const loaded = Buffer.concat([
    photo.subarray(0, 2),
    ...Array.from({ length: 16 }, (_, n) => segment(0xe0 + n, secret)).filter((_, n) => n !== 14),
    ...[0xfe, 0xf0, 0xf7, 0xfd].map((marker) => segment(marker, secret)),
    photo.subarray(2),
    // A second picture after the end, and a trailer.
    photo,
    secret,
  ]);

  it('of a JPEG: notes, remarks, unknown pieces, a second picture, a trailer', () => {
    expect(photo.includes('Owner of no camera')).toBe(true);
    const bytes = anew(loaded);
    for (const word of ['Owner', 'camera', 'Exif', 'remark', '51.0342'])
      expect(bytes.includes(word)).toBe(false);
    expect(bytes).toEqual(anew(photo));
    expect(bytes.length).toBeLessThan(6000);
  });

  it('of a PNG: text, notes, times, unknown chunks, what follows the end', () => {
    const plain = fixture('colour.png');
    const end = plain.length - 12;
    const types = ['tEXt', 'iTXt', 'zTXt', 'eXIf', 'tIME', 'iCCP', 'caBX', 'vpAg', 'prVt'];
    const png = Buffer.concat([
      plain.subarray(0, end),
      ...types.map((type) => chunk(type, secret)),
      plain.subarray(end),
      secret,
    ]);
    const bytes = anew(png);
    expect(bytes.subarray(0, 3)).toEqual(Buffer.from([0xff, 0xd8, 0xff]));
    for (const word of ['Owner', 'camera', '51.0342', 'tEXt']) expect(bytes.includes(word)).toBe(false);
    expect(bytes).toEqual(anew(plain));
  });

  it('and it is small, whatever its size', () => {
    const dice = new Dice(1);
    const [width, height] = [600, 400];
    const data = Uint8Array.from({ length: 4 * width * height }, () => dice.whole(0, 255));
    const bytes = anew(jpeg.encode({ width, height, data }, 90).data);
    expect(bytes.length).toBeLessThanOrEqual(LARGEST_PHOTO);
    const small = jpeg.decode(bytes);
    expect(small.width / small.height).toBeCloseTo(1.5, 2);
  });
});

describe('what cannot be shown is told in words', () => {
  const big = (width: number, height: number) => {
    const head = Buffer.alloc(13);
    head.writeUInt32BE(width, 0);
    head.writeUInt32BE(height, 4);
    head.set([8, 2, 0, 0, 0], 8);
    return Buffer.concat([
      Buffer.from('89504e470d0a1a0a', 'hex'),
      chunk('IHDR', head),
      chunk('IDAT', deflateSync(Buffer.alloc(50_000_000))),
      chunk('IEND', Buffer.alloc(0)),
    ]);
  };
  const photo = fixture('baseline.jpg');
  const scan = photo.subarray(photo.indexOf(Buffer.from([0xff, 0xda])), -2);
  it.each([
    ['a film', Buffer.from('ftypheic'), /no JPEG or PNG/],
    ['a WebP', fixture('picture.webp'), /no JPEG or PNG/],
    ['half a JPEG', photo.subarray(0, 900), /breaks off/],
    ['half a PNG', fixture('colour.png').subarray(0, 200), /breaks off/],
    [
      'a PNG with a bit turned',
      fixture('colour.png').map((byte, at) => (at === 100 ? byte ^ 1 : byte)),
      /damaged/,
    ],
    [
      'a JPEG of a thousand passes',
      Buffer.concat([photo.subarray(0, -2), ...Array(40).fill(scan), photo.subarray(-2)]),
      /as a camera does/,
    ],
    ['more pixels than there are', big(60_000, 60_000), /million pixels/],
    ['no pixels', big(0, 10), /no picture/],
  ] as const)('%s', (_, file, words) => {
    expect(() => pictureOf(Buffer.from(file))).toThrow(words);
  });

  it('no more of a PNG is unpacked than it takes', () => {
    expect(() => pictureOf(big(2, 2)).pixels()).toThrow();
  });

  it('damaged bytes end in a picture or in words, and soon', () => {
    const dice = new Dice(7);
    const names = readdirSync(PHOTOS).filter((name) => /\.(jpg|png)$/.test(name));
    let shown = 0;
    for (let round = 0; round < 40; round++) {
      const file = Buffer.from(fixture(dice.one(names)));
      for (let n = dice.whole(1, 6); n > 0; n--) file[dice.whole(2, file.length - 1)] = dice.whole(0, 255);
      const start = performance.now();
      try {
        anew(file);
        shown += 1;
      } catch (error) {
        expect(error).toBeInstanceOf(Error);
      }
      expect(performance.now() - start).toBeLessThan(3000);
    }
    expect(shown).toBeGreaterThan(4);
  });
});

describe('photos of a survey', () => {
  const survey = surveyOf(briefDemo('clay-slope'));
  const named = (...photos: string[]) => ({
    ...survey,
    layers: photos.map((photo) => ({ ...survey.layers[0]!, photo })),
  });

  it('come from its own folder only, and what is left out is told with its place before the computing', () => {
    const parent = passingFolder();
    const folder = join(parent, 'survey');
    mkdirSync(folder);
    for (const path of [join(parent, 'outside.jpg'), join(folder, 'p1.jpg')])
      writeFileSync(path, fixture('baseline.jpg'));
    symlinkSync(join(parent, 'outside.jpg'), join(folder, 'link.jpg'));
    symlinkSync('p1.jpg', join(folder, 'within.jpg'));
    symlinkSync('nowhere.jpg', join(folder, 'dangling.jpg'));
    mkdirSync(join(folder, 'folder.jpg'));
    writeFileSync(join(folder, 'text.jpg'), 'no picture');
    const photos = photosOf(named('p1.jpg', 'within.jpg', 'p1.jpg'), folder);
    expect(Object.keys(photos)).toEqual(['p1.jpg', 'within.jpg']);
    expect(photos['p1.jpg']).toMatch(/^data:image\/jpeg;base64,/);
    for (const [name, reason] of [
      ['../outside.jpg', 'no plain file name'],
      ['link.jpg', 'a link out of the folder'],
      ['dangling.jpg', 'it is no file'],
      ['folder.jpg', 'it is no file'],
      ['..', 'no plain file name'],
      ['text.jpg', 'no JPEG or PNG'],
      ['missing.jpg', 'there is no such file'],
    ] as const) {
      expect(photosOf(named(name, 'p1.jpg'), folder)).toEqual({ 'p1.jpg': photos['p1.jpg'] });
      expect(photoWarnings(named(name, 'p1.jpg'), folder)).toEqual([
        {
          code: 'photo-left-out',
          file: 'pits.csv',
          line: survey.layers[0]!.origin.line,
          column: 'photo',
          message: expect.stringMatching(
            new RegExp(`^photo '${name.replaceAll('.', '\\.')}' is left out: .*${reason}`),
          ),
        },
      ]);
    }
    const many = Array.from({ length: 30 }, (_, n) => `link-${n}.jpg`);
    for (const name of many) symlinkSync('p1.jpg', join(folder, name));
    expect(photoWarnings(named(...many), folder)).toHaveLength(6);
  });

  it('one that cannot be read does not cost the run', () => {
    const folder = passingFolder();
    for (const [name, text] of Object.entries(briefDemo('clay-slope')))
      writeFileSync(
        join(folder, name),
        name === 'pits.csv' ? text.replace(/\n/, ',photo\n').replace(/(?<=\n)(.+)/g, '$1,gone.jpg') : text,
      );
    const { warnings } = readSurvey(folder);
    expect(warnings.filter(({ code }) => code === 'photo-left-out')).toHaveLength(1);
  });
});
