/** Names of steps, rows and photos of the form, as they are read aloud. */

/** Which step it is. */
export function stepOfSteps(step: number, steps: number): string {
  return `Step ${step} of ${steps}:`;
}

/** A layer of a hole. */
export function layerOfHole(layer: number, hole: string): string {
  return `layer ${layer} of ${hole}`;
}

/** What a photo shows. */
export function layerPhotoAlt(top: string, hole: string): string {
  return `Layer from ${top} in ${hole}`;
}

/** Takes a hole away with its layers. */
export function takeOutHole(hole: string): string {
  return `Take out hole ${hole}`;
}

/** Gives a test a name. */
export function callItTest(test: number): string {
  return `Call it test ${test}`;
}

/** A look at a test. */
export function lookOfTest(look: number, test: string): string {
  return `Look ${look} of ${test}`;
}
