/** The front with what needs files, processes and notebooks: Node only. */
export * from './index.js';
export { type Html, show } from './notebook/display.js';
export { EnvironmentError } from './notebook/environmentError.js';
export { readFolder } from './notebook/files.js';
export { type Frame, toDataFrame } from './notebook/frame.js';
export type { Cell, ExecutedNotebook, Notebook, Output } from './notebook/nbformat.js';
export { OpenedPond, type OpenOptions, open } from './notebook/openedPond.js';
export { writeOutputs } from './notebook/outputs.js';
export { readSurvey } from './notebook/readSurvey.js';
export { NotebookError, type RunOptions, runNotebook } from './notebook/run.js';
export { newSurvey, writeSurvey } from './notebook/surveyFolder.js';
export { whatIfOutput } from './notebook/whatIfOutput.js';
