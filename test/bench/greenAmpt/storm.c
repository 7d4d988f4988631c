/* The loops of lib/soil/greenAmpt.ts in C. Reads n, step, K, P and the rain; prints ms of each repeat and the sum soaked in. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

static double growth(double a, double tau) {
  double b = 1 - a;
  double u = tau < 1 ? (2 * tau) / (b + sqrt(b * b + 2 * a * tau)) : tau + a * log(1 + tau);
  for (int i = 0; i < 6; i++) {
    double v = 1 + u;
    double g = u - a * log1p(u) - tau;
    double slope = (b + u) / v;
    double step = (2 * g * slope) / (2 * slope * slope - (g * a) / (v * v));
    u -= step;
    if (fabs(step) <= 1e-5 * u) return u;
  }
  return u;
}

static double run(const double *rain, int n, double step, double k, double p, double *runoff) {
  double take = k * step, soaked = 0;
  for (int i = 0; i < n; i++) {
    double r = rain[i], after = soaked + r, over = 0;
    if (take * (after + p) < r * after) {
      double from = soaked, left = take;
      if (take * (soaked + p) > r * soaked) {
        from = (take * p) / (r - take);
        left = take * (1 - (from - soaked) / r);
      }
      double reach = from + p;
      after = from + reach * growth(p / reach, left / reach);
      if (after > soaked + r) after = soaked + r;
      over = r - (after - soaked);
    }
    runoff[i] = over;
    soaked = after;
  }
  return soaked;
}

int main(void) {
  int n, storms, repeats;
  double step, k, p;
  if (scanf("%d %d %d %lf %lf %lf", &n, &storms, &repeats, &step, &k, &p) != 6) return 1;
  double *rain = malloc(n * sizeof *rain), *runoff = malloc(n * sizeof *runoff), sum = 0;
  for (int i = 0; i < n; i++)
    if (scanf("%lf", rain + i) != 1) return 1;
  for (int r = 0; r < repeats; r++) {
    struct timespec a, b;
    clock_gettime(CLOCK_MONOTONIC, &a);
    for (int s = 0; s < storms; s++) sum += run(rain, n, step, k * (1 + s * 1e-3), p, runoff);
    clock_gettime(CLOCK_MONOTONIC, &b);
    printf("%.4f\n", (b.tv_sec - a.tv_sec) * 1e3 + (b.tv_nsec - a.tv_nsec) / 1e6);
  }
  printf("%.15g\n", sum);
  return 0;
}
