/** What the malicious and the unlucky put into texts, bytes and names. */
import type { Dice } from '../survey/generated.js';

/** Each holds the mark where it would do harm, so that it is found again as it was or not at all. */
const TEXTS: ((mark: string) => string)[] = [
  (m) => `</script><script>${m}()</script>`,
  (m) => `<img src=x onerror=${m}()>`,
  (m) => `"><svg onload=${m}()>`,
  (m) => `' onmouseover='${m}()`,
  (m) => `<!--${m}`,
  (m) => `]]>${m}<![CDATA[`,
  (m) => `</style><style>*{content:"${m}"}`,
  (m) => `=HYPERLINK("http://${m}.invalid/"&A1)`,
  (m) => `x;=${m}+1`,
  (m) => `@SUM(1+1)*${m}`,
  (m) => `+${m}|cmd`,
  (m) => `-2+3+cmd|' /C ${m}'!A0`,
  (m) => `$\\href{javascript:${m}()}{x}$`,
  (m) => `\\(\\require{html}\\style{${m}}{x}\\)`,
  (m) => `[x](javascript:${m}()) **b** \`${m}\``,
  (m) => `\u001b]52;c;${m}\u0007\u001b[2J`,
  (m) => `\u009b31m${m}\u202egnp.exe\u2066`,
  (m) => `${m}\u2028\u2029\u0085\u200b\u00ad\ufeff`,
  (m) => `${m}\r\n${m}`,
  (m) => `\${${m}} {{${m}}} %s%n%x`,
  (m) => `../../../etc/${m}`,
  (m) => `${'💧'.repeat(30)}${m}`,
  (m) => `e\u0301\u0301\u0301${m}\u0430`,
  (m) => m.repeat(60),
  () => '__proto__',
  () => 'constructor',
  () => 'toString',
  () => 'hasOwnProperty',
  () => '1e999',
  () => '0',
  () => 'site',
  () => 'below:P1',
  () => 'pond',
];

/** Any of them. */
export function hostileText(dice: Dice, mark: string): string {
  return dice.one(TEXTS)(mark);
}

export const HOSTILE_NAMES = [
  '__proto__',
  'constructor.csv',
  'POND.CSV',
  'pond.csv ',
  'pond.csv.bak',
  'pond (1).csv',
  'pits.cvs',
  '.pond.csv',
  '~$pond.xlsx',
  '-rf',
  '$(touch x).csv',
  'a\nb.csv',
  '\u001b[2J.csv',
  '\u202evsc.dnop',
  'po\u0301nd.csv',
  '<b>.csv',
  `${'n'.repeat(240)}.csv`,
  'photo.jpg',
  'loop.csv',
  'readme.md',
  'weather.csv',
  'weather.csv.gz',
  'pits.csv.gz',
  'station.dly',
  'Pond.CSV.txt',
  'later',
  'soakage.csv',
];

const latin1 = (text: string) => Uint8Array.from(text, (sign) => sign.charCodeAt(0) & 255);
const utf16 = (text: string, big: boolean) => {
  const bytes = new Uint8Array(2 + 2 * text.length);
  const view = new DataView(bytes.buffer);
  [`\ufeff`, ...text.split('')].forEach((sign, at) => {
    view.setUint16(2 * at, sign.charCodeAt(0), !big);
  });
  return bytes;
};
const utf8 = (text: string) => new TextEncoder().encode(text);
/** Some place in it. */
const place = (bytes: { length: number }, dice: Dice) => dice.whole(0, Math.max(0, bytes.length - 1));

const WRITERS: ((text: string, dice: Dice) => Uint8Array)[] = [
  (text) => latin1(text),
  (text) => utf16(text, false),
  (text) => utf16(text, true),
  (text, dice) => utf16(text, false).slice(0, -dice.whole(1, 9)),
  (text) => utf8(text.replaceAll('\n', '\r')),
  (text) => utf8(text.replaceAll(',', ';')),
  (text) => utf8(text.replaceAll(',', '\t')),
  (text) => utf8(text.replaceAll(',', ' , ')),
  (text) => utf8(`sep=,\n${text}`),
  (text) => utf8(text.replaceAll(/^|(?<=[,\n])/g, '"')),
  (text, dice) => utf8(text).slice(0, place(text, dice)),
  (text, dice) => {
    const bytes = utf8(text);
    bytes[place(bytes, dice)] = dice.one([0, 10, 13, 34, 44, 0x80, 0xc0, 0xff]);
    return bytes;
  },
  (text, dice) => {
    const at = place(text, dice);
    const much = dice.one(['"', '""', ',', '\n', '"\n', ',,,,,,']).repeat(dice.one([1, 3, 500, 60_000]));
    return utf8(text.slice(0, at) + much + text.slice(at));
  },
  (text, dice) =>
    utf8(
      text.replace(/(?<=\n)/, `${dice.one(['x', '1', ' ', '\u00bd']).repeat(dice.one([2100, 250_000]))},`),
    ),
  (text, dice) =>
    utf8(
      text +
        text
          .split('\n')
          .slice(1)
          .join('\n')
          .repeat(dice.one([1, 2, 40])),
    ),
];

/** A text in one of the ways that programs write text, damaged or not. */
export function bytesOf(text: string, dice: Dice): Uint8Array {
  return dice.one(WRITERS)(text, dice);
}
