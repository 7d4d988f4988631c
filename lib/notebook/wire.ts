/** Messages of the Jupyter wire protocol 5.3, signed with HMAC-SHA256. */

import { createHmac, randomUUID, timingSafeEqual } from 'node:crypto';
import { EnvironmentError } from './environmentError.js';

const DELIMITER = '<IDS|MSG>';

/** Who sent a message, when, and of what type. */
interface Header {
  msg_id: string;
  msg_type: string;
  session: string;
  username: string;
  date: string;
  version: string;
}

/** A message without its routing prefix and signature. An unprompted message has an empty parent header. */
export interface Message {
  header: Header;
  parent_header: Partial<Header>;
  metadata: Record<string, unknown>;
  content: Record<string, unknown>;
}

/**
 * A request with a fresh id.
 * @param type message type, such as `execute_request`
 * @param content what the type asks for
 * @param session id of the client, the same in all its messages
 */
export function newMessage(type: string, content: Record<string, unknown>, session: string): Message {
  return {
    header: {
      msg_id: randomUUID(),
      msg_type: type,
      session,
      username: 'underpond',
      date: new Date().toISOString(),
      version: '5.3',
    },
    parent_header: {},
    metadata: {},
    content,
  };
}

/** HMAC-SHA256 over the four parts in order, hexadecimal. */
export function signature(key: string, parts: readonly (string | Uint8Array)[]): string {
  const hmac = createHmac('sha256', key);
  for (const part of parts) hmac.update(part);
  return hmac.digest('hex');
}

/** The frames to send: delimiter, signature, header, parent header, metadata, content. */
export function encode(key: string, message: Message): string[] {
  const parts = [message.header, message.parent_header, message.metadata, message.content].map((part) =>
    JSON.stringify(part),
  );
  return [DELIMITER, signature(key, parts), ...parts];
}

/**
 * Reads frames as received; routing identities before the delimiter are dropped.
 * @throws EnvironmentError when the delimiter or a part is missing, or the signature is not that of the parts under `key`
 */
export function decode(key: string, frames: readonly Buffer[]): Message {
  const at = frames.findIndex((frame) => frame.toString() === DELIMITER);
  const [sent, ...parts] = at < 0 ? [] : frames.slice(at + 1, at + 6);
  if (sent === undefined || parts.length < 4)
    throw new EnvironmentError(
      'kernel-failed',
      `invalid kernel message: ${frames.length} frames without delimiter and four parts`,
    );
  const expected = Buffer.from(signature(key, parts));
  if (sent.length !== expected.length || !timingSafeEqual(sent, expected))
    throw new EnvironmentError(
      'kernel-failed',
      'invalid kernel message: its signature does not fit the connection key',
    );
  const [header, parent_header, metadata, content] = parts.map((part) => JSON.parse(part.toString()));
  return { header, parent_header, metadata, content };
}
