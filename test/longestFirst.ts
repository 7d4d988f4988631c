/** Starts the longest files first, lest one of them run alone at the end while the other processor idles. */
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** They start browsers, kernels and programs, or judge many surveys; the longest first. */
const LONG = [
  'page/browser',
  'notebook/run',
  'notebook/lab',
  'risk/enumeration',
  'guard/safe',
  'risk/measureFirst',
  'drain/site',
  'page/hand',
  'notebook/newSurvey',
].map((name) => `/test/${name}.test.ts`);

export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const place = ({ moduleId }: TestSpecification) => {
      const at = LONG.findIndex((name) => moduleId.endsWith(name));
      return at < 0 ? LONG.length : at;
    };
    return (await super.sort(files)).sort((a, b) => place(a) - place(b));
  }
}
