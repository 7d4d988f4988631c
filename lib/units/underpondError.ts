/** Something given that cannot be worked with: `message` tells a person what and what to do, `code` a program. */
export abstract class UnderpondError extends Error {
  /** lower case with hyphens; of one meaning wherever it stands */
  abstract readonly code: string;
}
