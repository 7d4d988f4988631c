/** The README's photographs of page and card: drawn by a browser, with few colours, and marked with what they show. */
import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { crc32, deflateSync } from 'node:zlib';
import { chromium } from 'playwright-core';
import type { Report } from '../../lib/contract/index.js';
import type { Pixels } from '../../lib/notebook/pixels.js';
import { pngPicture } from '../../lib/notebook/png.js';
import { pageHtml, pondCardHtml } from '../../lib/page/index.js';

export interface Photograph {
  name: string;
  html: string;
  /** of the file, the part that is shown */
  part: string;
  width: number;
}

/** What is photographed; without a date, so that nothing but its content makes it old. */
export function photographs(report: Report): Photograph[] {
  return [
    {
      name: 'first-screen.png',
      html: pageHtml(report, { worked: [], version: '0' }),
      part: 'header',
      width: 960,
    },
    { name: 'pond-card.png', html: pondCardHtml(report), part: 'body', width: 397 },
  ];
}

/** A digest of what the picture shows: its part of the file, and the style. */
export function contentOf({ html, part }: Photograph): string {
  const [style] = /<style>[\s\S]*?<\/style>/.exec(html)!;
  const [shown] = new RegExp(`<${part}[ >][\\s\\S]*?</${part}>`).exec(html)!;
  return createHash('sha256').update(style).update(shown).digest('hex');
}

const KEY = 'shows';
/** White round about, px. */
const EDGE = 14;

/** The digest that a picture is marked with. */
export function markOf(png: Buffer): string | undefined {
  return new RegExp(`tEXt${KEY}\\0([0-9a-f]{64})`).exec(png.toString('latin1'))?.[1];
}

/** Draws them, each as a PNG. */
export async function draw(all: readonly Photograph[]): Promise<Buffer[]> {
  const executablePath = process.env.CHROMIUM ?? '/usr/bin/chromium';
  if (!existsSync(executablePath))
    throw new Error('the pictures of the README need chromium to be made anew');
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox'] });
  try {
    const drawn: Buffer[] = [];
    for (const photograph of all) {
      const page = await browser.newPage({
        viewport: { width: photograph.width, height: 559 },
        deviceScaleFactor: 1.5,
      });
      await page.setContent(photograph.html);
      await page.evaluate(`document.documentElement.style.padding = '${EDGE}px'`);
      const box = (await page.locator(photograph.part).boundingBox())!;
      const clip = {
        x: box.x - EDGE,
        y: box.y - EDGE,
        width: box.width + 2 * EDGE,
        height: box.height + 2 * EDGE,
      };
      const shot = await page.screenshot({ fullPage: true, clip });
      drawn.push(fewColours(pngPicture(shot).pixels(), contentOf(photograph)));
    }
    return drawn;
  } finally {
    await browser.close();
  }
}

const COLOURS = 32;

/** A PNG of the colours that are most in it; the others take the nearest of them. */
function fewColours({ width, height, data }: Pixels, mark: string): Buffer {
  const colour = (at: number) => (data[at]! << 16) | (data[at + 1]! << 8) | data[at + 2]!;
  const count = new Map<number, number>();
  for (let at = 0; at < data.length; at += 4) count.set(colour(at), (count.get(colour(at)) ?? 0) + 1);
  const parts = (one: number) => [one >> 16, (one >> 8) & 255, one & 255];
  const palette = [...count]
    .sort(([, a], [, b]) => b - a)
    .slice(0, COLOURS)
    .map(([one]) => parts(one));
  const nearest = new Map<number, number>();
  for (const one of count.keys()) {
    const far = palette.map((other) =>
      parts(one).reduce((sum, value, channel) => sum + (value - other[channel]!) ** 2, 0),
    );
    nearest.set(one, far.indexOf(Math.min(...far)));
  }
  const rows = Buffer.alloc(height * (width + 1));
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) rows[y * (width + 1) + 1 + x] = nearest.get(colour(4 * (y * width + x)))!;
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([8, 3, 0, 0, 0], 8);
  return Buffer.concat([
    Buffer.from('89504e470d0a1a0a', 'hex'),
    chunk('IHDR', header),
    chunk('tEXt', Buffer.from(`${KEY}\0${mark}`, 'latin1')),
    chunk('PLTE', Buffer.from(palette.flat())),
    chunk('IDAT', deflateSync(rows, { level: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

function chunk(type: string, body: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(type, 'latin1'), body]);
  const frame = Buffer.alloc(4);
  frame.writeUInt32BE(body.length);
  const check = Buffer.alloc(4);
  check.writeUInt32BE(crc32(named));
  return Buffer.concat([frame, named, check]);
}
