/** The form at work: what was typed, what the reader found in it, the answer, and where it is kept. */
import { surveyFileOf } from '../../survey/index.js';
import { lostWords, takenOutWords } from '../../text/formNotices.js';
import type { Answer } from '../answer.js';
import { type Answers, factRow, noAnswers, textOf } from '../answers.js';
import { readable } from '../folder.js';
import { type Remarks, remarksOf } from '../placed.js';
import type { Findings, Given } from '../reading.js';
import { labelOf, type StepName } from '../steps.js';
import { type News, type Reckonings, reckonings, type Scripts } from './reckonings.js';
import { keepAnswers, keepFiles, keptAnswers, keptFiles, whenKeptElsewhere } from './storage.js';

/** What the form shows. */
interface Shown {
  answers: Answers;
  attached: ReadonlyMap<string, Uint8Array>;
  step: StepName;
  /** field that the reader was sent to */
  target?: string;
  findings: Findings;
  remarks: Remarks;
  /** the last there was */
  answer?: Answer;
  /** how the answer stands to the facts: none is reckoned, one is, it is a first or the last, or it is of before a fault */
  state: 'none' | 'busy' | 'quick' | 'full' | 'refused' | 'failed';
  /** what went wrong in reckoning, or was done */
  told?: string;
  /** when it was last kept, or that it cannot be */
  kept: Date | 'nowhere' | 'not yet';
  /** another window has changed it since */
  elsewhere: boolean;
}

/** Rest of the hand before what was typed is read, ms. */
const REST = 350;
/** Larger files are read with the answer only. */
const LARGE = 50_000;

export class Session {
  shown: Shown;
  readonly #reckonings: Reckonings;
  readonly #open = new Set<string>();
  /** folds that have had a reason to open, which still stands */
  readonly #reasons = new Set<string>();
  #rest = 0;
  #changedFiles = false;
  #filesRead = Promise.resolve(new Map<string, Uint8Array>());
  /** as JSON, where what is typed was read whole and not refused */
  #survey?: string;
  #before?: Answers;
  #filesBefore?: ReadonlyMap<string, Uint8Array>;

  /**
   * @param scripts of the workers
   * @param show draws what is shown now
   */
  constructor(
    scripts: Scripts,
    readonly version: string,
    private readonly show: () => void,
  ) {
    this.shown = {
      answers: noAnswers(),
      attached: new Map(),
      step: 'pond',
      findings: { problems: [], warnings: [] },
      remarks: new Map(),
      state: 'none',
      kept: 'not yet',
      elsewhere: false,
    };
    this.#reckonings = reckonings(scripts, (news) => this.#hear(news));
    whenKeptElsewhere(() => this.#set({ elsewhere: true }));
    window.addEventListener('pagehide', () => this.#keep());
    document.addEventListener('visibilitychange', () => {
      if (document.visibilityState === 'hidden') this.#keep();
    });
  }

  /** Takes up what this browser has kept. */
  async begin(): Promise<void> {
    const answers = keptAnswers();
    if (!answers) return;
    this.#set({ answers, kept: new Date() });
    this.#filesRead = keptFiles();
    // Something may have been typed or attached meanwhile.
    const attached = new Map([...(await this.#filesRead), ...this.shown.attached]);
    const now = this.shown.answers;
    const lost = now.attached.filter((name) => !attached.has(name));
    this.#set({
      answers: { ...now, attached: now.attached.filter((name) => attached.has(name)) },
      attached: new Map([...attached].filter(([name]) => now.attached.includes(name))),
      told: lost.length > 0 ? lostWords(lost) : this.shown.told,
    });
    this.#ask();
  }

  #set(change: Partial<Shown>): void {
    this.shown = { ...this.shown, ...change };
    this.show();
  }

  /** Is anything typed or attached? */
  get empty(): boolean {
    const { answers } = this.shown;
    return answers.attached.length === 0 && Object.values(answers.rows).every((rows) => rows.length === 0);
  }

  /** What the survey is called where it says nothing. */
  get name(): string {
    const said = textOf(factRow(this.shown.answers, 'site.csv', 'name'), 'value');
    return (
      said
        .replace(/[^\p{L}\p{N}]+/gu, '-')
        .replace(/^-|-$/g, '')
        .slice(0, 60) || 'survey'
    );
  }

  /** Changes what is typed. */
  edit(change: (answers: Answers) => Answers): void {
    this.#before = undefined;
    this.#filesBefore = undefined;
    this.#survey = undefined;
    const { state } = this.shown;
    this.#set({
      answers: change(this.shown.answers),
      told: undefined,
      state: state === 'full' || state === 'quick' ? 'busy' : state,
    });
    clearTimeout(this.#rest);
    this.#rest = window.setTimeout(() => {
      this.#rest = 0;
      this.#keep();
      this.#ask();
    }, REST);
  }

  /** Takes something away that can be had back until the next change. */
  remove(change: (answers: Answers) => Answers, what: string): void {
    const before = this.shown.answers;
    this.edit(change);
    this.#before = before;
    this.#set({ told: takenOutWords(what) });
  }

  get canUndo(): boolean {
    return this.#before !== undefined;
  }

  undo(): void {
    const [before, files] = [this.#before, this.#filesBefore];
    if (before && files) this.replace(before, files);
    else if (before) this.edit(() => before);
  }

  /** Attaches files, or takes one away; a file of that name is replaced. */
  attach(files: ReadonlyMap<string, Uint8Array>, without: readonly string[] = []): void {
    const attached = new Map([...this.shown.attached].filter(([name]) => !without.includes(name)));
    for (const [name, bytes] of files) attached.set(name, bytes);
    this.#changedFiles = true;
    this.shown = { ...this.shown, attached };
    this.edit((answers) => ({ ...answers, attached: [...attached.keys()] }));
  }

  /** Another survey in the place of this one, which can be had back until the next change. */
  replace(answers: Answers, attached: ReadonlyMap<string, Uint8Array>, told?: string): void {
    const before = this.shown;
    this.#changedFiles = true;
    this.shown = { ...this.shown, answer: undefined, state: 'none', attached, remarks: new Map() };
    this.edit(() => answers);
    this.#before = before.answers;
    this.#filesBefore = before.attached;
    this.#set({ told });
  }

  /** An empty form. */
  startAnew(): void {
    this.go('pond');
    this.replace(noAnswers(), new Map(), 'A new survey.');
  }

  /** Whether a fold stands open: a reason opens it once, and then it is left to the reader. */
  unfolded(key: string, reason: boolean): boolean {
    if (reason && !this.#reasons.has(key)) this.#open.add(key);
    if (reason) this.#reasons.add(key);
    else this.#reasons.delete(key);
    return this.#open.has(key);
  }

  /** A fold as the reader left it. */
  toggle(key: string, open: boolean): void {
    if (this.#open.has(key) === open) return;
    if (open) this.#open.add(key);
    else this.#open.delete(key);
    this.show();
  }

  /** Closes folds by the beginning of their keys. */
  foldAll(beginning: string): void {
    for (const key of this.#open) if (key.startsWith(beginning)) this.#open.delete(key);
  }

  /** @param target field to go to there, by its id; 'fault' is the first that is to be mended or filled in */
  go(step: StepName, target?: string): void {
    this.#set({ step, target, told: undefined });
  }

  tell(told: string | undefined): void {
    this.#set({ told });
  }

  /** The page, the pond card and result.json of the survey as it was read last. */
  outputs(photos: Readonly<Record<string, string>>) {
    if (this.#survey === undefined) return Promise.reject(new Error('there is no answer yet'));
    return this.#reckonings.outputs(this.#survey, this.version, photos);
  }

  #keep(): void {
    if (this.shown.kept === 'not yet' && this.empty) return;
    if (!keepAnswers(this.shown.answers)) {
      this.#set({ kept: 'nowhere' });
      return;
    }
    this.#set({ kept: new Date() });
    if (this.#changedFiles) void this.#keepFiles();
  }

  async #keepFiles(): Promise<void> {
    await this.#filesRead;
    this.#changedFiles = false;
    if (await keepFiles(this.shown.attached)) return;
    this.#set({
      kept: 'nowhere',
      told: 'This browser keeps no files: photos and weather are gone when you close it, unless you save the survey.',
    });
  }

  #ask(): void {
    if (this.empty) {
      this.#set({
        findings: { problems: [], warnings: [] },
        remarks: new Map(),
        answer: undefined,
        state: 'none',
      });
      return;
    }
    const { answers, attached } = this.shown;
    const given: Given = { files: readable(answers, attached), name: this.name };
    const weather = (name: string) => (surveyFileOf(name) ?? 'weather.csv') === 'weather.csv';
    const large = Object.keys(given.files).filter(
      (name) => given.files[name]!.length > LARGE && weather(name),
    );
    this.#reckonings.take(given, large);
  }

  #hear(news: News): void {
    if (news.kind === 'failed') {
      this.#set({ state: 'failed', told: `This could not be reckoned: ${news.message}` });
      return;
    }
    if (news.kind === 'answer') {
      const { answer, last } = news;
      this.#set({
        answer,
        state: last ? 'full' : 'quick',
        remarks: remarksOf(this.shown.answers, [], answer.warnings, labelOf),
      });
      return;
    }
    const { findings, survey } = news;
    const refused = findings.problems.length > 0;
    const remarks = remarksOf(this.shown.answers, findings.problems, findings.warnings, labelOf);
    this.#survey = survey;
    this.#set({ findings, remarks, state: refused ? 'refused' : 'busy' });
  }
}
