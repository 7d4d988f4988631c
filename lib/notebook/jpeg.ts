/** JPEG files: what is in one is looked at piece by piece before any of it is decoded. */
/*! jpeg-js decodes with jpgjs: copyright 2011 notmasteryet, licensed under the Apache License, Version 2.0. */
import jpeg from 'jpeg-js';
import { type Picture, type Pixels, turned } from './pixels.js';

/** More passes over a picture than any camera makes are there to cost time. */
const MOST_SCANS = 32;
const MEMORY_MB = 1500;

/** Frames coded by Huffman's method, at once or progressively (ITU-T T.81, table B.1). */
const FRAMES = [0xc0, 0xc1, 0xc2];
/** Tables and Adobe's note on colours: what a picture needs besides its frame and its scans. */
const TABLES = [0xc4, 0xdb, 0xdd, 0xee];
const [START, END, SCAN, EXIF] = [0xd8, 0xd9, 0xda, 0xe1];

export function isJpeg(file: Buffer): boolean {
  return file[0] === 0xff && file[1] === START;
}

/**
 * A JPEG up to its end mark; what follows, and every piece that makes no pixel, is left behind.
 * @throws Error where it breaks off, or is of a kind that is not read
 */
export function jpegPicture(file: Buffer): Picture {
  const kept: Buffer[] = [file.subarray(0, 2)];
  let [size, scans, orientation]: [[number, number] | undefined, number, number] = [undefined, 0, 1];
  for (const { marker, start, end } of segmentsOf(file)) {
    const body = file.subarray(start + 4, end);
    if (FRAMES.includes(marker)) {
      if (size || body.length < 6) throw new Error('it holds more than one picture, or half of one');
      size = [body.readUInt16BE(3), body.readUInt16BE(1)];
    } else if (marker === SCAN) {
      scans += 1;
      if (!size || scans > MOST_SCANS) throw new Error('its picture is not coded as a camera does');
    } else if (marker === EXIF) orientation = orientationOf(body) ?? orientation;
    else if (marker >= 0xc0 && marker <= 0xcf && !TABLES.includes(marker))
      throw new Error('it is coded in a way that is not read here');
    if (marker === SCAN || FRAMES.includes(marker) || TABLES.includes(marker))
      kept.push(file.subarray(start, end));
  }
  if (!size || scans === 0) throw new Error('there is no picture in it');
  const bytes = Buffer.concat([...kept, Buffer.from([0xff, END])]);
  const [width, height] = size;
  return { width, height, pixels: () => turned(decoded(bytes), orientation) };
}

function decoded(bytes: Buffer): Pixels {
  const { width, height, data } = jpeg.decode(bytes, { useTArray: true, maxMemoryUsageInMB: MEMORY_MB });
  return { width, height, data };
}

/** A picture as a JPEG that holds nothing but it. */
export function encodedJpeg(pixels: Pixels, quality: number): Buffer {
  return jpeg.encode(pixels, quality).data;
}

/** Pieces from the start mark to the end mark; that of a scan ends with its coded pixels. */
function* segmentsOf(file: Buffer): Generator<{ marker: number; start: number; end: number }> {
  let at = 2;
  while (at + 1 < file.length) {
    if (file[at] !== 0xff) throw new Error('it is damaged');
    const marker = file[at + 1]!;
    if (marker === END) return;
    // A piece may begin with more than one 0xff.
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    if (at + 4 > file.length) break;
    let end = at + 2 + file.readUInt16BE(at + 2);
    if (end < at + 4) throw new Error('it is damaged');
    if (marker === SCAN) end = endOfScan(file, end);
    if (end > file.length) break;
    yield { marker, start: at, end };
    at = end;
  }
  throw new Error('it breaks off before its end');
}

/** Where the next mark stands that is neither a byte of the scan nor one of its restarts. */
function endOfScan(file: Buffer, from: number): number {
  for (let at = file.indexOf(0xff, from); at >= 0; at = file.indexOf(0xff, at + 1)) {
    const next = file[at + 1];
    if (next !== 0 && !(next !== undefined && next >= 0xd0 && next <= 0xd7)) return at;
  }
  return file.length;
}

/** How the camera was held (Exif 2.3, tag 0x0112 of the first directory), where its notes can be read. */
function orientationOf(notes: Buffer): number | undefined {
  if (notes.toString('latin1', 0, 6) !== 'Exif\0\0') return undefined;
  const tiff = notes.subarray(6);
  const little = tiff.toString('latin1', 0, 2) === 'II';
  const number = (at: number, bytes: 2 | 4) =>
    at + bytes > tiff.length ? 0 : little ? tiff.readUIntLE(at, bytes) : tiff.readUIntBE(at, bytes);
  const first = number(4, 4);
  for (let entry = 0; entry < number(first, 2); entry++) {
    const at = first + 2 + 12 * entry;
    if (number(at, 2) === 0x0112) return number(at + 8, 2);
  }
  return undefined;
}
