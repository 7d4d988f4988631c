import type { Statement, StatementValues } from '../contract/index.js';
import type { UnitSystem } from '../units/index.js';
import { sayer, type Wording, wordsOf } from './say.js';
import { SERVING_TEXT } from './servingText.js';
import { WAITING_TEXT } from './waitingText.js';
import { WISH_TEXT } from './wishText.js';

const STATEMENTS: Wording<StatementValues> = { ...WISH_TEXT, ...SERVING_TEXT, ...WAITING_TEXT };

/**
 * A reason in words, nothing said twice.
 * @param statements - in their order, each its code with its values
 * @param units - of the reader
 * @returns sentences
 */
export function reasonText(statements: readonly Statement[], units: UnitSystem): string {
  const say = sayer(units);
  const sentences = statements.map((statement) => wordsOf<StatementValues>(STATEMENTS, statement, say));
  return [...new Set(sentences)].join(' ');
}
