/** Controls of the what-if: a slider beside a box to type in, and a choice. */
import { slopeNumber } from '../text/sheetWords.js';
import { outOfRangeWords } from '../text/whatIfNotices.js';
import { formatQuantity, INCH, parseQuantity, type UnitSystem } from '../units/index.js';
import { PARAMETERS, type ParameterRange, type WhatIfParameter } from './whatIfParameters.js';

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

/**
 * A slider over the range of a number, widened to hold what was surveyed, with steps of the reader's tape; and a box
 * for any number in it.
 * @param write - takes the number, m
 * @param refused - is told why what was typed is not tried
 */
export function numberControl(
  [key, surveyed, most]: ParameterRange,
  read: () => number | undefined,
  write: (value: number) => void,
  refused: (why: string) => void,
): Control {
  const parameter: WhatIfParameter = PARAMETERS[key];
  const { label, kind, step } = parameter;
  const range = { min: Math.min(parameter.min, surveyed), max: most };
  const slider = element('input', '');
  const box = element('input', 'typed');
  const name = element('label', '');
  let shown: UnitSystem = 'metric';
  made += 1;
  slider.id = `what-if-${key}-${made}`;
  name.htmlFor = slider.id;
  name.textContent = label;
  slider.type = 'range';
  slider.dataset.key = key;
  box.type = 'text';
  box.autocomplete = 'off';
  box.setAttribute('aria-label', `${label}, typed`);
  const inches = () => (shown === 'us' ? parameter.inches : undefined);
  const scale = () => (inches() === undefined ? 1 : INCH);
  const size = (value: number) =>
    kind === 'slope' ? slopeNumber(value) : formatQuantity(value, kind, shown);
  const typed = (text: string) =>
    kind === 'slope'
      ? parseQuantity(text, 'none')
      : parseQuantity(text, 'length', shown === 'us' ? 'ft' : 'm');
  slider.addEventListener('input', () => write(Number((Number(slider.value) * scale()).toFixed(4))));
  box.addEventListener('change', () => {
    let value: number | undefined;
    try {
      value = typed(box.value);
    } catch {
      // Told below with the range.
    }
    const fits = value !== undefined && value >= range.min && value <= range.max;
    box.setAttribute('aria-invalid', String(!fits));
    if (fits) write(value!);
    else
      refused(
        outOfRangeWords(label, kind === 'slope' ? 'number' : 'length', size(range.min), size(range.max)),
      );
  });
  return {
    element: element('div', 'control', name, element('div', 'number', slider, box)),
    first: key === 'depth',
    show(units) {
      shown = units;
      const value = read() ?? surveyed;
      const [unit, by] = [scale(), inches() ?? step];
      slider.step = String(by);
      slider.min = String(Number((Math.ceil(range.min / unit / by - 1e-6) * by).toFixed(4)));
      slider.max = String(Number((range.max / unit).toFixed(4)));
      slider.value = String(value / unit);
      const words = size(value);
      slider.setAttribute('aria-valuetext', words);
      box.value = words;
      box.removeAttribute('aria-invalid');
    },
  };
}

/** A choice; the empty one stands for what was surveyed or is held. */
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
      // A link may ask for what is held by its name.
      if (select.selectedIndex < 0) select.value = '';
    },
  };
}
