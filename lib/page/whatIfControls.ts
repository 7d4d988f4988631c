/** Controls of the what-if: a slider with its value in words, and a choice. */
import { formatQuantity, type UnitSystem } from '../units/index.js';
import { type NumberKey, TRIED } from './tried.js';

export interface Control {
  element: HTMLElement;
  /** stands before the others */
  first: boolean;
  /** brings the control to the state, in a system of units */
  show(units: UnitSystem): void;
}

let made = 0;

/** An element with a class and children. */
export function element<K extends keyof HTMLElementTagNameMap>(
  name: K,
  kind: string,
  ...children: Node[]
): HTMLElementTagNameMap[K] {
  const made = document.createElement(name);
  if (kind) made.className = kind;
  made.append(...children);
  return made;
}

/** A slider over the range of a number, widened to hold what was surveyed. */
export function numberControl(
  key: NumberKey,
  surveyed: number,
  read: () => number | undefined,
  write: (value: number) => void,
): Control {
  const { label, kind, min, max, step } = TRIED[key];
  const input = element('input', '');
  const output = element('output', '');
  const name = element('label', '');
  made += 1;
  input.id = `what-if-${key}-${made}`;
  name.htmlFor = input.id;
  name.textContent = label;
  output.htmlFor.add(input.id);
  Object.assign(input, {
    type: 'range',
    min: String(Math.min(min, surveyed)),
    max: String(Math.max(max, surveyed)),
    step: String(step),
  });
  input.dataset.key = key;
  input.addEventListener('input', () => write(Number(input.value)));
  return {
    element: element('div', 'control', name, output, input),
    first: key === 'depth',
    show(units) {
      const value = read() ?? surveyed;
      input.value = String(value);
      const words = formatQuantity(value, kind, units);
      output.textContent = words;
      input.setAttribute('aria-valuetext', words);
    },
  };
}

/** A choice; the empty one stands for what was surveyed or recommended. */
export function choiceControl(
  key: string,
  label: string,
  choices: [value: string, words: string][],
  read: () => string | undefined,
  write: (value: string | undefined) => void,
): Control {
  const select = element('select', '');
  const name = element('label', '');
  made += 1;
  select.id = `what-if-${key}-${made}`;
  select.dataset.key = key;
  name.htmlFor = select.id;
  name.textContent = label;
  for (const [value, words] of choices) {
    const option = element('option', '');
    option.value = value;
    option.textContent = words;
    select.append(option);
  }
  select.addEventListener('change', () => write(select.value === '' ? undefined : select.value));
  return {
    element: element('div', 'control', name, select),
    first: key === 'option',
    show(units) {
      select.value = read() ?? (key === 'units' ? units : '');
    },
  };
}
