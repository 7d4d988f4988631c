/** What is held in the hand: the card, the answer of the day, photos. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { photosOf, smallImage } from '../../lib/notebook/photos.js';
import { pondCardHtml, todayWords } from '../../lib/page/index.js';
import { marksOf } from '../../lib/page/pondCard.js';
import { lowerToday } from '../../lib/risk/index.js';
import { itInChromium } from '../chromium.js';
import { invented } from '../figures/report.js';
import { demoFiles, surveyOf } from '../folder.js';
import { passingFolder } from '../notebook/notebooks.js';
import { assessmentOf, fileOf } from './demoPage.js';
import { labelFaults } from './labels.js';

describe('the pond card', () => {
  it('marks each month on the safe side, counted down from full', () => {
    const levels = [0.25, 0.4, 0.123, null, null, 0.123, 0.25, 0.25, 0.25, 0.25, 0.25, 0.25];
    expect(marksOf(levels, 0.3)).toEqual([
      { below: 0, months: [2] },
      { below: 0.05, months: [1, 7, 8, 9, 10, 11, 12] },
      { below: 0.17, months: [3, 6] },
      { below: null, months: [4, 5] },
    ]);
  });

  it('says in words what the stick shows, for a drain that runs and one that does not', () => {
    const html = pondCardHtml(invented());
    expect(html).toMatch(
      /aria-label="Stick with its top at the full level\. drain runs: .*drain does not run: /,
    );
    expect(html).toMatch(/Jun, Jul, Aug, Sep may be emptied/);
    expect(html.replaceAll('\u00a0', ' ')).toContain('plus 0.10 m');
  });
});

itInChromium('the pond card is one A6 sheet without a label cut off', async (page) => {
  await page.goto(fileOf(pondCardHtml(invented())));
  await page.emulateMedia({ media: 'print' });
  await page.setViewportSize({ width: 352, height: 480 });
  expect(await labelFaults(page)).toEqual([]);
  const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
  expect(pdf.match(/\/Type \/Page\b/g)).toHaveLength(1);
  // A6 in points.
  expect(pdf).toMatch(/\/MediaBox \[0 0 29[78](?:\.\d+)? 4(?:19|20)(?:\.\d+)?\]/);
});

describe('may I lower it today', () => {
  const withDip = (rows: string) => {
    const files = demoFiles('clay-slope');
    files['water.csv'] += rows;
    files['levels.csv'] += 'under-liner,dip-pipe,0.5,0,10.1,\n';
    return assessmentOf(surveyOf(files));
  };

  it('has no answer without a dip pipe, and says so', () => {
    expect(lowerToday(withDip(''))).toBeNull();
    expect(todayWords(invented(), 'metric')).toContain('no reading of a dip pipe');
  });

  it('allows down to the water found and the margin', () => {
    // Pipe at 10.10 on the mark, lowest rim ground at 10: water 0.30 below the pipe stands at -0.20.
    const today = lowerToday(withDip('dip-pipe,2024-09-14,09:00,level,0.30,1.4,10,3.2,0.90,\n'))!;
    expect(today).toMatchObject({ date: '2024-09-14', month: 9, dry: false });
    expect(today.water_m).toBeCloseTo(-0.2, 9);
    expect(today.lowest_m).toBeCloseTo(-0.1, 9);
    const words = todayWords({ ...invented(), lower_today: today }, 'metric');
    expect(words).toContain('On 2024-09-14 the dip pipe showed water at \u22120.20 m');
    expect(words).toContain('let down to \u22120.10 m, 0.40 m below full');
  });

  it('allows emptying over a pipe that is dry below the floor', () => {
    const today = lowerToday(withDip('dip-pipe,2024-09-14,09:00,dry,,1.4,10,3.2,0.90,\n'))!;
    expect(today).toMatchObject({ dry: true, lowest_m: null });
  });

  it('does not lower a pond that the water stands above', () => {
    const today = lowerToday(withDip('dip-pipe,2024-02-14,09:00,level,-0.25,1.4,10,3.2,0.90,\n'))!;
    expect(todayWords({ ...invented(), lower_today: today }, 'metric')).toContain('do not lower it');
  });
});

describe('photos of pits', () => {
  const segment = (marker: number, body: Buffer) =>
    Buffer.concat([Buffer.from([0xff, marker]), u16(body.length + 2), body]);
  const u16 = (value: number) => Buffer.from([value >> 8, value & 255]);
  const picture = (size: number) =>
    Buffer.concat([Buffer.from([0xff, 0xda, 0, 2]), Buffer.alloc(size, 7), Buffer.from([0xff, 0xd9])]);
  /** Notes of a camera, big-endian: one tag, then a second directory with a thumbnail. */
  const exif = (thumbnail: Buffer) => {
    const u32 = (value: number) =>
      Buffer.from([value >>> 24, (value >> 16) & 255, (value >> 8) & 255, value & 255]);
    const tag = (id: number, value: number) => Buffer.concat([u16(id), u16(4), u32(1), u32(value)]);
    const first = Buffer.concat([u16(1), tag(0x8825, 99), u32(26)]);
    const second = Buffer.concat([u16(2), tag(0x0201, 56), tag(0x0202, thumbnail.length), u32(0)]);
    return segment(
      0xe1,
      Buffer.concat([Buffer.from('Exif\0\0MM\0*\0\0\0\b', 'latin1'), first, second, thumbnail]),
    );
  };
  const START = Buffer.from([0xff, 0xd8]);
  const small = Buffer.concat([
    START,
    segment(0xe1, Buffer.from('Exif\0\0place and owner')),
    segment(0xfe, Buffer.from('remark')),
    picture(50),
  ]);

  it('lose place, time and owner', () => {
    const { type, bytes } = smallImage(small)!;
    expect(type).toBe('image/jpeg');
    expect(bytes).toEqual(Buffer.concat([START, picture(50)]));
  });

  it('that are large are shown by the thumbnail of the camera, and left out without one', () => {
    const large = Buffer.concat([START, exif(small), picture(300_000)]);
    expect(smallImage(large)!.bytes).toEqual(Buffer.concat([START, picture(50)]));
    expect(smallImage(Buffer.concat([START, picture(300_000)]))).toBeUndefined();
    expect(
      smallImage(
        Buffer.concat([
          START,
          segment(0xe1, Buffer.from('Exif\0\0MM\0*\0\0\xff\xff', 'latin1')),
          picture(300_000),
        ]),
      ),
    ).toBeUndefined();
  });

  it('are taken from the folder of the survey only, and only if they are pictures', () => {
    const parent = passingFolder();
    const folder = join(parent, 'survey');
    mkdirSync(folder);
    writeFileSync(join(parent, 'outside.jpg'), small);
    writeFileSync(join(folder, 'p1.jpg'), small);
    writeFileSync(join(folder, 'notes.jpg'), 'no picture');
    const files = demoFiles('clay-slope');
    const survey = surveyOf(files);
    const named = (photo: string) => ({
      ...survey,
      layers: survey.layers.map((layer) => ({ ...layer, photo })),
    });
    expect(Object.keys(photosOf(named('p1.jpg'), folder))).toEqual(['p1.jpg']);
    expect(photosOf(named('p1.jpg'), folder)['p1.jpg']).toMatch(/^data:image\/jpeg;base64,/);
    for (const name of ['../outside.jpg', 'notes.jpg', 'missing.jpg', '..', ''])
      expect(photosOf(named(name), folder)).toEqual({});
  });
});
