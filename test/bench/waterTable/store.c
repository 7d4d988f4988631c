/* The loop of runColumn, with the same formulas and the same balance; cc -O3, no -ffast-math. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

typedef struct {
  double porosity, recession, base, spill, extinction, delay, capacity, demand, cracks, drain, rate, melt;
} Set;
typedef struct {
  double snow, deficit, waiting, held;
} State;

static double excess(double held, double limit) { return held > limit ? held - limit : 0; }
static double leaving(double held, double share) { return held > 1e-12 ? held * share : held; }
static double least(double a, double b) { return a < b ? a : b; }
static double total(const State *s) { return s->snow - s->deficit + s->waiting + s->held; }

static double run(int days, const double *rain, const double *tmean, const double *et, const Set *p, State *s,
                  double *liquid, double *recharge, double *depth, double *spill) {
  double rise = 1 / p->porosity, full = (p->base - p->spill) * p->porosity;
  double undrained = fmax(p->base - p->drain, 0) * p->porosity, stressed = (1 - 0.37) * p->capacity;
  double arrives = 1 - exp(-1 / p->delay), drains = 1 - exp(-p->rate), recedes = 1 - exp(-p->recession);
  double base = p->base, capacity = p->capacity, extinction = p->extinction, factor = p->demand;
  double cracks = p->cracks, rate = p->melt;
  double snow = s->snow, deficit = s->deficit, waiting = s->waiting, held = s->held, balance = 0;
  double start = total(s);
  for (int d = 0; d < days; d++) {
    double fell = rain[d], warmth = tmean[d];
    double melt = least(warmth < 0 ? 0 : rate * warmth, snow), snowfall = warmth < 0 ? fell : 0;
    double water = fell - snowfall + melt;
    snow += snowfall - melt;
    double bypass = cracks * water / capacity * deficit, matrix = water - bypass;
    double through = bypass + excess(matrix, deficit);
    deficit = excess(deficit, matrix);
    double wanted = et[d] * factor, left = capacity - deficit;
    double drawn = least(least(wanted * left / stressed, wanted), left);
    deficit += drawn;
    waiting += through;
    double arriving = leaving(waiting, arrives);
    waiting -= arriving;
    held += arriving;
    double over = excess(held, full);
    held -= over;
    double led = excess(held, undrained) * drains;
    held -= led;
    double z = base - held * rise;
    double taken = least(z < extinction ? (wanted - drawn) / extinction * (extinction - z) : 0, held);
    held -= taken;
    double outflow = leaving(held, recedes);
    held -= outflow;
    liquid[d] = water;
    recharge[d] = through;
    depth[d] = base - held * rise;
    spill[d] = over;
    balance += fell - drawn - over - led - taken - outflow;
  }
  *s = (State){snow, deficit, waiting, held};
  return balance - (total(s) - start);
}

/* stdin: n, then n triples of rain, temperature and demand; argument: sets. Prints the time (ms of processor) and the sum
   of the last depths. */
int main(int argc, char **argv) {
  int n, sets = atoi(argv[1]);
  if (argc != 2 || scanf("%d", &n) != 1) return 1;
  double *a[7];
  for (int k = 0; k < 7; k++) a[k] = malloc(n * sizeof(double));
  for (int d = 0; d < n; d++)
    if (scanf("%lf %lf %lf", &a[0][d], &a[1][d], &a[2][d]) != 3) return 1;
  double sum = 0;
  clock_t begun = clock();
  for (int i = 0; i < sets; i++) {
    Set p = {0.02 + 0.00001 * i, 0.012, 2, 0.06, 1.4, 0.5, 0.1, 1, 0.1, 0.5, 0.1, 0.003};
    State s = {0, 0.3 * p.capacity, 0, 0.5 * (p.base - p.spill) * p.porosity};
    for (int pass = 0; pass < 2; pass++)
      if (!(fabs(run(pass ? n : 365, a[0], a[1], a[2], &p, &s, a[3], a[4], a[5], a[6])) <= 1e-9)) return 1;
    sum += a[5][n - 1];
  }
  printf("%.3f\n%.9f\n", 1000.0 * (clock() - begun) / CLOCKS_PER_SEC, sum);
  return 0;
}
