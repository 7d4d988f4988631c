import type { Report } from '../contract/index.js';
import { groundWords, pegName, referenceNames } from '../text/settingOutWords.js';
import { FOOT } from '../units/index.js';
import { csvText } from './csv.js';

/**
 * `setting-out.csv`: a row a peg: what it marks, where it stands on the axes of the survey (or along the pond and across
 * it from its middle), its distances from two references and on which side of their line it lies, its level on the datum
 * and on the mark of levels.csv, to what level it is dug, the ground there and the cut.
 * @param report - from {@link reportOf}
 * @returns header and rows ended by CR LF (RFC 4180), lengths in metres to the millimetre, or in decimal feet where the
 *   survey asks for US units; nothing where the ground is not known; the header alone where nothing is dug
 */
export function settingOutCsv({ setting_out: set, units }: Report): string {
  const unit = units === 'us' ? 'ft' : 'm';
  const axes = set?.axes === 'pond' ? ['along', 'across'] : ['x', 'y'];
  const header = [
    'peg',
    'marks',
    ...axes.map((axis) => `${axis}_${unit}`),
    'tie_from_1',
    `tie_1_${unit}`,
    'tie_from_2',
    `tie_2_${unit}`,
    'side_of_1_to_2',
    `level_${unit}`,
    `level_on_mark_${unit}`,
    `dig_to_level_${unit}`,
    `ground_level_${unit}`,
    'ground_from',
    `cut_${unit}`,
  ];
  if (!set) return csvText([header]);
  const number = (value: number | null) =>
    value === null ? '' : Number((value / (units === 'us' ? FOOT : 1)).toFixed(3)) + 0;
  const [first, second] = referenceNames(set);
  const rows = set.pegs.map((peg) => [
    peg.number,
    pegName(peg, units),
    number(peg.x_m),
    number(peg.y_m),
    first,
    number(peg.ties_m[0]),
    second,
    number(peg.ties_m[1]),
    peg.side,
    number(peg.level_m),
    number(peg.mark_m),
    number(peg.dug_m),
    number(peg.ground_m),
    groundWords(peg),
    number(peg.cut_m),
  ]);
  return csvText([header, ...rows]);
}
