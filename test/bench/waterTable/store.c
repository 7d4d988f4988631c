/* The daily loops of runSnow, runRootZone and runTableStore, with the same closure sums; cc -O3, no -ffast-math. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

typedef struct {
  double porosity, recession, base, spill, extinction, delay, capacity, demand, cracks, drain, rate, melt;
} Set;

static double run(int n, const double *rain, const double *tmean, const double *et, Set p, double *liquid,
                  double *recharge, double *unmet, double *depth, double *spilled) {
  double stressFrom = 0.37 * p.capacity, slope = 1 / (p.capacity - stressFrom), cracks = p.cracks / p.capacity;
  double deficit = 0.3 * p.capacity, closure = 0, pack = 0;
  for (int d = 0; d < n; d++) {
    double before = pack, warmth = tmean[d], water = 0;
    if (warmth < 0) pack += rain[d];
    else {
      double melt = p.melt * warmth;
      if (melt > pack) melt = pack;
      pack -= melt;
      water = rain[d] + melt;
    }
    liquid[d] = water;
    closure += rain[d] - water - (pack - before);
  }
  for (int d = 0; d < n; d++) {
    double before = deficit, water = liquid[d], bypass = water * cracks * deficit, matrix = water - bypass;
    double through = bypass + (matrix > deficit ? matrix - deficit : 0);
    deficit = matrix > deficit ? 0 : deficit - matrix;
    double stress = deficit > stressFrom ? (p.capacity - deficit) * slope : 1;
    double wanted = et[d] * p.demand, drawn = wanted * stress;
    if (drawn > p.capacity - deficit) drawn = p.capacity - deficit;
    deficit += drawn;
    recharge[d] = through;
    unmet[d] = wanted - drawn;
    closure += water - through - drawn - (before - deficit);
  }
  double top = p.base - p.spill, perMetre = 1 / p.porosity, perExtinction = 1 / p.extinction;
  double drain = p.base - p.drain, drains = 1 - exp(-p.rate), recede = 1 - exp(-p.recession), arrives = 1 - exp(-1 / p.delay), y = 0.5 * top, waiting = 0;
  for (int d = 0; d < n; d++) {
    double before = y * p.porosity + waiting;
    waiting += recharge[d];
    double arriving = waiting > 1e-12 ? waiting * arrives : waiting;
    waiting -= arriving;
    y += arriving * perMetre;
    double over = y > top ? (y - top) * p.porosity : 0;
    if (y > top) y = top;
    double led = y > drain ? (y - drain) * drains : 0;
    y -= led;
    double fade = 1 - (p.base - y) * perExtinction;
    double drawn = fade > 0 ? unmet[d] * fade : 0;
    if (drawn > y * p.porosity) drawn = y * p.porosity;
    y -= drawn * perMetre;
    double outflow = y > 1e-12 ? y * recede : y;
    y -= outflow;
    depth[d] = p.base - y;
    spilled[d] = over;
    closure += recharge[d] - over - drawn - (led + outflow) * p.porosity - (y * p.porosity + waiting - before);
  }
  return closure + depth[n - 1];
}

static double now(void) {
  struct timespec t;
  clock_gettime(CLOCK_MONOTONIC, &t);
  return t.tv_sec + 1e-9 * t.tv_nsec;
}

/* stdin: n, then n triples of rain, temperature and demand; arguments: sets, repeats. Prints a time (ms) a repeat. */
int main(int argc, char **argv) {
  int n, sets = atoi(argv[1]), repeats = atoi(argv[2]);
  if (argc != 3 || scanf("%d", &n) != 1) return 1;
  double *a[8];
  for (int k = 0; k < 8; k++) a[k] = malloc(n * sizeof(double));
  for (int d = 0; d < n; d++)
    if (scanf("%lf %lf %lf", &a[0][d], &a[1][d], &a[2][d]) != 3) return 1;
  double sum = 0;
  for (int r = 0; r < repeats; r++) {
    double t = now();
    for (int i = 0; i < sets; i++) {
      Set p = {0.02 + 0.00001 * i, 0.012, 2, 0.06, 1.4, 0.5, 0.1, 1, 0.1, 0.5, 0.1, 0.003};
      sum += run(n, a[0], a[1], a[2], p, a[3], a[4], a[5], a[6], a[7]);
    }
    printf("%.3f\n", 1000 * (now() - t));
  }
  fprintf(stderr, "%g\n", sum);
  return 0;
}
