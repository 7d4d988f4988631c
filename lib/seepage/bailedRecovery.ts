import { method } from '../formula/index.js';
import { FieldTestError, fitLevels, type LevelReading, type PermeabilityTest } from '../soil/index.js';
import { flushIntakeShapeFactor, intakeShapeFactor } from './hvorslev.js';

export const bailedRecovery = method({
  title: 'Recovery of a bailed standpipe or hole (basic time lag)',
  what: 'Permeability from the water coming back: the depth still missing shrinks by a factor e in each time lag.',
  assumptions: [
    'the level outside is known and stands still; ground and water do not give',
    'the intake lies below the water all the time',
    'shape factor of a cylinder in uniform ground: it reads 10 to 13 % high against a numerical solution of the flow',
    'layered clay reads between its across and along values',
  ],
  source: 'Hvorslev 1951',
});

/** A standpipe or hole below the water. Lengths m. */
export interface Intake {
  /** inside diameter of the pipe the water rises in, or of the hole */
  pipeDiameter: number;
  /** diameter of the hole or sand pack round it */
  holeDiameter: number;
  /** length open to the ground, 0.02 and more; absent: the pipe is open at its end only */
  openLength?: number;
  /** one standard deviation of a look; absent: {@link TAPE_ERROR} */
  tape?: number;
}

/**
 * Permeability from a recovery, see {@link bailedRecovery}.
 * @param readings - at least two: time, s; `level` = depth of the water in the pipe below where it stands at rest, m, shrinking
 * @param intake - geometry of the hole, m
 * @returns permeability of the ground, m/s, with its spread
 * @throws FieldTestError when the intake or the readings cannot be interpreted
 */
export function bailedRecoveryTest(readings: LevelReading[], intake: Intake): PermeabilityTest {
  const { pipeDiameter, holeDiameter, openLength } = intake;
  if (!(pipeDiameter > 0 && holeDiameter >= pipeDiameter))
    throw new FieldTestError(
      'geometry',
      `invalid pipe of ${pipeDiameter} m in a hole of ${holeDiameter} m`,
      'Give the inside diameter of the pipe and the diameter of the hole round it.',
    );
  if (openLength !== undefined && !(openLength >= 0.02))
    throw new FieldTestError(
      'geometry',
      `open length ${openLength} m is outside 0.02 m upwards`,
      'Say how long the part is through which water enters.',
    );
  const shape =
    openLength === undefined
      ? flushIntakeShapeFactor.compute(pipeDiameter / 2)
      : intakeShapeFactor.compute(openLength, holeDiameter / 2);
  const scale = (Math.PI * pipeDiameter ** 2) / 4 / shape;
  return fitLevels(
    readings,
    {
      method: 'recovery after bailing (time lag)',
      potential: (y) => scale * Math.log(y),
      slope: (y) => scale / y,
      kind: 'recovering',
      methodSpread: 0.4,
      bias: [],
    },
    intake.tape,
  );
}
