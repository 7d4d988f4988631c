/** Photos of pits, made small and stripped of what a camera adds: place, time, owner. */
import { readFileSync, statSync } from 'node:fs';
import { basename, join } from 'node:path';
import type { Survey } from '../survey/index.js';

/** Largest photo put into the page, bytes; a larger JPEG is shown by the thumbnail its camera put into it. */
export const LARGEST_PHOTO = 120_000;
/** Larger files are not even read, bytes. */
const LARGEST_FILE = 40_000_000;

/**
 * The photos that `pits.csv` names, as data URIs by that name. Only plain names of files in the survey's own folder
 * count; what is missing, no JPEG, PNG or WebP, or too large to be made small is left out.
 * @param folder of the survey
 */
export function photosOf(survey: Survey, folder: string): Record<string, string> {
  const names = new Set(survey.layers.flatMap(({ photo }) => (photo ? [photo] : [])));
  return Object.fromEntries(
    [...names].flatMap((name) => {
      const path = join(folder, name);
      const plain = basename(name) === name && !name.includes('\\') && name !== '..';
      const file = plain ? statSync(path, { throwIfNoEntry: false }) : undefined;
      if (!file?.isFile() || file.size > LARGEST_FILE) return [];
      const image = smallImage(readFileSync(path));
      return image ? [[name, `data:${image.type};base64,${image.bytes.toString('base64')}`]] : [];
    }),
  );
}

interface Image {
  type: 'image/jpeg' | 'image/png' | 'image/webp';
  bytes: Buffer;
}

/** An image small enough for the page, without a camera's notes; undefined where it cannot be had. */
export function smallImage(file: Buffer): Image | undefined {
  const image = strippedImage(file);
  if (image && image.bytes.length <= LARGEST_PHOTO) return image;
  const thumbnail = image?.type === 'image/jpeg' ? thumbnailOf(file) : undefined;
  const small = thumbnail && strippedImage(thumbnail);
  return small && small.bytes.length <= LARGEST_PHOTO ? small : undefined;
}

function strippedImage(file: Buffer): Image | undefined {
  if (file.subarray(0, 2).equals(Buffer.from([0xff, 0xd8]))) {
    const bytes = strippedJpeg(file);
    return bytes && { type: 'image/jpeg', bytes };
  }
  if (file.subarray(0, 8).equals(Buffer.from('89504e470d0a1a0a', 'hex')))
    return { type: 'image/png', bytes: strippedPng(file) };
  if (file.toString('latin1', 0, 4) === 'RIFF' && file.toString('latin1', 8, 12) === 'WEBP')
    // Chunks of a WebP are kept whole only where it holds none but the picture.
    return /EXIF|XMP /.test(file.toString('latin1')) ? undefined : { type: 'image/webp', bytes: file };
  return undefined;
}

/** Segments of a JPEG before its picture: marker, start of the marker, end. */
function* segmentsOf(file: Buffer): Generator<{ marker: number; start: number; end: number }> {
  let at = 2;
  while (at + 4 <= file.length && file[at] === 0xff) {
    const marker = file[at + 1]!;
    const end = marker === 0xda ? file.length : at + 2 + file.readUInt16BE(at + 2);
    if (end > file.length) return;
    yield { marker, start: at, end };
    at = end;
  }
}

/** Without application notes (but JFIF and Adobe's colours) and comments. */
function strippedJpeg(file: Buffer): Buffer | undefined {
  const kept = [...segmentsOf(file)].filter(
    ({ marker }) => !(marker >= 0xe1 && marker <= 0xef && marker !== 0xee) && marker !== 0xfe,
  );
  if (kept.at(-1)?.marker !== 0xda) return undefined;
  return Buffer.concat([file.subarray(0, 2), ...kept.map(({ start, end }) => file.subarray(start, end))]);
}

/** Only the chunks that make the picture. */
function strippedPng(file: Buffer): Buffer {
  const chunks: Buffer[] = [file.subarray(0, 8)];
  for (let at = 8; at + 12 <= file.length; ) {
    const end = at + 12 + file.readUInt32BE(at);
    const type = file.toString('latin1', at + 4, at + 8);
    if (!/^(tEXt|zTXt|iTXt|eXIf|tIME)$/.test(type)) chunks.push(file.subarray(at, end));
    at = end;
  }
  return Buffer.concat(chunks);
}

/** The small JPEG that a camera lays into the notes of a large one (Exif 2.3, second directory). */
function thumbnailOf(file: Buffer): Buffer | undefined {
  for (const { marker, start, end } of segmentsOf(file)) {
    if (marker !== 0xe1 || file.toString('latin1', start + 4, start + 10) !== 'Exif\0\0') continue;
    const tiff = file.subarray(start + 10, end);
    const little = tiff.toString('latin1', 0, 2) === 'II';
    const u16 = (at: number) => (little ? tiff.readUInt16LE(at) : tiff.readUInt16BE(at));
    const u32 = (at: number) => (little ? tiff.readUInt32LE(at) : tiff.readUInt32BE(at));
    try {
      const first = u32(4);
      const second = u32(first + 2 + 12 * u16(first));
      if (second === 0) return undefined;
      const tags = new Map(
        Array.from({ length: u16(second) }, (_, i) => {
          const at = second + 2 + 12 * i;
          return [u16(at), u32(at + 8)] as const;
        }),
      );
      const [offset, length] = [tags.get(0x0201), tags.get(0x0202)];
      return offset === undefined || length === undefined
        ? undefined
        : tiff.subarray(offset, offset + length);
    } catch (error) {
      // Notes that point outside themselves are as good as none.
      if (error instanceof RangeError) return undefined;
      throw error;
    }
  }
  return undefined;
}
