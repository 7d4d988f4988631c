/**
 * What runs in the page: draws the figures for the width there is, and moves the table with the slider. Plain text, the
 * same for every report: its data stands in the page beside it, so its hash is that of the page's policy.
 */
export const SCRIPT = `'use strict';
(() => {
  const { figures, slider } = JSON.parse(document.getElementById('data').textContent);
  const config = { displayModeBar: false, responsive: false };
  const drawn = {};
  const draw = () => {
    for (const [id, figure] of Object.entries(figures)) {
      const place = document.getElementById(id);
      const width = Math.floor(place.getBoundingClientRect().width);
      if (!width || drawn[id] === width) continue;
      if (drawn[id] === undefined) place.textContent = '';
      drawn[id] = width;
      const layout = structuredClone(width < 560 ? figure.narrow : figure.wide);
      Plotly.react(place, figure.data, { ...layout, autosize: false, width }, config);
    }
  };
  if (window.Plotly) {
    draw();
    addEventListener('resize', draw);
    addEventListener('beforeprint', draw);
    matchMedia('print').addEventListener('change', draw);
  }
  const input = document.getElementById('depth');
  if (!input) return;
  const cells = document.querySelectorAll('#at-depth tbody tr');
  const show = () => {
    const at = Number(input.value);
    document.getElementById('depth-now').textContent = slider.depths[at];
    input.setAttribute('aria-valuetext', slider.depths[at]);
    slider.options.forEach(({ rows }, i) => {
      const row = rows[at];
      const [, verdict, year, dig, fails] = cells[i].children;
      verdict.textContent = row.safe ? 'safe' : 'not safe';
      verdict.className = row.safe ? 'safe' : 'unsafe';
      year.textContent = row.per_year;
      dig.textContent = row.per_dig;
      fails.textContent = row.fails;
    });
  };
  input.disabled = false;
  input.addEventListener('input', show);
  show();
})();
`;
