/** Elements written as text, and what a field is given. */
import { html } from 'htm/preact';
import type { ComponentChildren, VNode } from 'preact';
import type { UnitSystem } from '../../units/index.js';
import type { Remark } from '../placed.js';
import type { Choice, Question } from '../questions.js';

/** htm gives one element for one root. */
export const view = html as (strings: TemplateStringsArray, ...values: unknown[]) => VNode;

export interface FieldProps {
  id: string;
  question: Question;
  text: string;
  /** of the bare number */
  unit?: string;
  units: UnitSystem;
  remarks?: readonly Remark[];
  onWrite(text: string, unit?: string): void;
  /** holes that may be named */
  holes?: readonly Choice[];
  /** besides the control */
  children?: ComponentChildren;
  /** the label is enough here: why stands once above */
  brief?: boolean;
}
