import { expect, it } from 'vitest';
import { decode, encode, newMessage, signature } from '../../lib/notebook/wire.js';

const frames = (key: string, message = newMessage('execute_request', { code: '1' }, 'session')) =>
  encode(key, message).map((frame) => Buffer.from(frame));

it('signs as RFC 4231 says HMAC-SHA256 does', () => {
  // Test case 2 of the RFC, and the same text in the four parts of a message; from memory.
  const digest = '5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843';
  expect(signature('Jefe', ['what do ya want for nothing?'])).toBe(digest);
  expect(signature('Jefe', ['what do ya ', Buffer.from('want '), 'for ', 'nothing?'])).toBe(digest);
});

it('reads what it wrote, behind any routing identities', () => {
  const message = newMessage('execute_request', { code: 'é' }, 'session');
  expect(message.header).toMatchObject({ msg_type: 'execute_request', session: 'session', version: '5.3' });
  expect(decode('key', frames('key', message))).toEqual(message);
  expect(decode('key', [Buffer.from('one'), Buffer.from('two'), ...frames('key', message)])).toEqual(message);
});

it('gives every message its own id', () => {
  expect(newMessage('a', {}, 's').header.msg_id).not.toBe(newMessage('a', {}, 's').header.msg_id);
});

it('refuses a wrong key, a changed part and a cut message', () => {
  expect(() => decode('other', frames('key'))).toThrow('its signature does not fit the connection key');
  const changed = frames('key');
  changed[5] = Buffer.from('{"code":"2"}');
  expect(() => decode('key', changed)).toThrow('its signature does not fit the connection key');
  expect(() => decode('key', frames('key').slice(0, 5))).toThrow('5 frames without delimiter and four parts');
  expect(() => decode('key', [])).toThrow('0 frames');
});
