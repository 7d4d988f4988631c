/** Opens a month of the year's figure: hover, tap or arrow keys show its sentence. */

/** Brings the figure of the year to life. */
export function offerMonths(): void {
  const section = document.getElementById('year');
  const told = section?.querySelector<HTMLElement>('.month-words');
  const words = Array.from(section?.querySelectorAll('.months li') ?? [], (item) => item.textContent ?? '');
  const groups = Array.from(section?.querySelectorAll<SVGGElement>('.fig-month[data-month]') ?? []);
  if (!told || words.length !== 12) return;
  let at = new Date().getMonth();
  const open = (month: number) => {
    at = (month + 12) % 12;
    told.textContent = words[at]!;
    for (const group of groups) group.classList.toggle('chosen', Number(group.dataset.month) === at + 1);
  };
  for (const group of groups)
    for (const kind of ['pointerenter', 'click'] as const)
      group.addEventListener(kind, () => open(Number(group.dataset.month) - 1));
  const figure = document.getElementById('your-year')!;
  figure.tabIndex = 0;
  figure.setAttribute('aria-label', 'The year, month by month: arrow keys go from month to month');
  figure.addEventListener('keydown', ({ key }) => {
    if (key === 'ArrowRight') open(at + 1);
    else if (key === 'ArrowLeft') open(at - 1);
  });
  told.hidden = false;
  open(at);
}
