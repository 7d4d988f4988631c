import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { digestOf } from '../../lib/survey/digest.js';

test("agrees with Node's own SHA-256 over lengths, names and contents", () => {
  const part = (text: string) => {
    const bytes = Buffer.from(text, 'utf8');
    const length = Buffer.alloc(4);
    length.writeUInt32LE(bytes.length);
    return Buffer.concat([length, bytes]);
  };
  const whole = Buffer.concat(['a.csv', 'é,1', 'b.csv', ''].map(part));
  expect(digestOf({ 'b.csv': '', 'a.csv': 'é,1' })).toBe(createHash('sha256').update(whole).digest('hex'));
});

test('files that would run together differ', () => {
  expect(digestOf({ a: 'bc' })).not.toBe(digestOf({ ab: 'c' }));
  expect(digestOf({ a: '', b: '' })).not.toBe(digestOf({ a: 'b' }));
});
