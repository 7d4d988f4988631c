/** PNG files (ISO/IEC 15948): size, palette and pixels are read, every other piece is left behind. */
import { crc32, inflateSync } from 'node:zlib';
import type { Picture, Pixels } from './pixels.js';

const SIGNATURE = Buffer.from('89504e470d0a1a0a', 'hex');
/** Numbers a pixel by type of colour: grey, colour, palette, grey and opacity, colour and opacity. */
const CHANNELS: Record<number, number> = { 0: 1, 2: 3, 3: 1, 4: 2, 6: 4 };
const PALETTE = 3;

interface Header {
  width: number;
  height: number;
  /** bits a number */
  depth: number;
  colour: number;
}

export function isPng(file: Buffer): boolean {
  return file.subarray(0, 8).equals(SIGNATURE);
}

/**
 * A PNG up to its last chunk.
 * @throws Error where it breaks off, is damaged, or is of a kind that is not read
 */
export function pngPicture(file: Buffer): Picture {
  const chunks = chunksOf(file);
  const [first] = chunks;
  if (first?.type !== 'IHDR' || first.body.length !== 13) throw new Error('it is damaged');
  const [width, height] = [first.body.readUInt32BE(0), first.body.readUInt32BE(4)];
  const [depth, colour, , , interlaced] = first.body.subarray(8) as unknown as number[];
  const depths = colour === PALETTE ? [1, 2, 4, 8] : colour === 0 ? [1, 2, 4, 8, 16] : [8, 16];
  if (CHANNELS[colour!] === undefined || !depths.includes(depth!)) throw new Error('it is damaged');
  if (interlaced !== 0) throw new Error('it is interlaced, which is not read here');
  const bodies = (type: string) => chunks.filter((chunk) => chunk.type === type).map(({ body }) => body);
  const header: Header = { width, height, depth: depth!, colour: colour! };
  return {
    width,
    height,
    pixels: () => decoded(header, Buffer.concat(bodies('IDAT')), bodies('PLTE')[0] ?? Buffer.alloc(0)),
  };
}

function chunksOf(file: Buffer): { type: string; body: Buffer }[] {
  const chunks: { type: string; body: Buffer }[] = [];
  for (let at = 8; at + 12 <= file.length; ) {
    const end = at + 12 + file.readUInt32BE(at);
    if (end > file.length) break;
    const type = file.toString('latin1', at + 4, at + 8);
    if (crc32(file.subarray(at + 4, end - 4)) !== file.readUInt32BE(end - 4))
      throw new Error('it is damaged');
    if (type === 'IEND') return chunks;
    chunks.push({ type, body: file.subarray(at + 8, end - 4) });
    at = end;
  }
  throw new Error('it breaks off before its end');
}

function decoded({ width, height, depth, colour }: Header, packed: Buffer, palette: Buffer): Pixels {
  const channels = CHANNELS[colour]!;
  const stride = Math.ceil((width * channels * depth) / 8);
  // No more is unpacked than the picture takes, whatever was packed.
  const rows = inflateSync(packed, { maxOutputLength: height * (stride + 1) });
  if (rows.length !== height * (stride + 1)) throw new Error('it is damaged');
  unfilter(rows, height, stride, Math.max(1, (channels * depth) / 8));
  const data = new Uint8Array(4 * width * height);
  const most = 2 ** depth - 1;
  /** A number of a row as it stands; of 16 bits the upper half. */
  const number = (start: number, at: number) => {
    if (depth >= 8) return rows[start + at * (depth / 8)]!;
    const bit = at * depth;
    return (rows[start + (bit >> 3)]! >> (8 - depth - (bit & 7))) & most;
  };
  const scale = depth < 8 ? 255 / most : 1;
  for (let y = 0; y < height; y++) {
    const start = y * (stride + 1) + 1;
    for (let x = 0; x < width; x++) {
      const first = x * channels;
      const opaque = colour >= 4 ? number(start, first + channels - 1) / 255 : 1;
      for (let channel = 0; channel < 3; channel++) {
        const value = number(start, channels >= 3 ? first + channel : first);
        const light = colour === PALETTE ? palette[3 * value + channel] : value * scale;
        if (light === undefined) throw new Error('it is damaged');
        // What is seen through stands on white paper.
        data[4 * (y * width + x) + channel] = Math.round(255 + (light - 255) * opaque);
      }
      data[4 * (y * width + x) + 3] = 255;
    }
  }
  return { width, height, data };
}

/** What a byte was made smaller by, from the bytes before it, above it and between these (clause 9). */
const FILTERS: ((before: number, above: number, corner: number) => number)[] = [
  () => 0,
  (before) => before,
  (_, above) => above,
  (before, above) => (before + above) >> 1,
  // Whichever is nearest to the plane through the three.
  (before, above, corner) => {
    const estimate = before + above - corner;
    const [a, b, c] = [Math.abs(estimate - before), Math.abs(estimate - above), Math.abs(estimate - corner)];
    return a <= b && a <= c ? before : b <= c ? above : corner;
  },
];

function unfilter(rows: Buffer, height: number, stride: number, step: number): void {
  for (let y = 0; y < height; y++) {
    const start = y * (stride + 1) + 1;
    const guess = FILTERS[rows[start - 1]!];
    if (!guess) throw new Error('it is damaged');
    for (let at = start; at < start + stride; at++) {
      const isFirst = at < start + step;
      const before = isFirst ? 0 : rows[at - step]!;
      const above = y > 0 ? rows[at - stride - 1]! : 0;
      const corner = isFirst || y === 0 ? 0 : rows[at - step - stride - 1]!;
      rows[at] = (rows[at]! + guess(before, above, corner)) & 255;
    }
  }
}
