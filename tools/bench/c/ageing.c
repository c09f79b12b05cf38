/*
 * The ageing of brood and bees as src/colony/engine/ageing.ts has it, on the same numbers in the same order: what
 * a compiler makes of it is the measure for the program. Prints milliseconds and the sum of all cohorts.
 */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

enum { brood_days = 21, adult_days = 80 };

int main(int argc, char **argv) {
  if (argc < 13) return 2;
  int count = atoi(argv[1]), days = atoi(argv[2]), size = atoi(argv[3]), brood_at = atoi(argv[4]), adults_at = atoi(argv[5]);
  int hatch = atoi(argv[6]), seal = atoi(argv[7]), flight = atoi(argv[8]);
  double house_loss = atof(argv[9]), field_loss = atof(argv[10]), hatches = atof(argv[11]), seals = atof(argv[12]);
  double emerges = atof(argv[13]);
  double *values = calloc((size_t)count * size, sizeof *values);
  struct timespec from, to;
  clock_gettime(CLOCK_MONOTONIC, &from);
  for (int day = 0; day < days; day += 1) {
    for (int p = 0; p < count; p += 1) {
      double *brood = values + (size_t)p * size + brood_at;
      double *adults = values + (size_t)p * size + adults_at;
      double emerging = brood[brood_days - 1] * emerges;
      for (int i = brood_days - 1; i > 0; i -= 1) brood[i] = brood[i - 1];
      brood[0] = 1000 + p;
      brood[hatch] *= hatches;
      brood[seal] *= seals;
      double house = exp(-house_loss), field = exp(-field_loss);
      adults[adult_days - 1] = (adults[adult_days - 1] + adults[adult_days - 2]) * field;
      int i = adult_days - 2;
      for (; i > flight; i -= 1) adults[i] = adults[i - 1] * field;
      for (; i > 0; i -= 1) adults[i] = adults[i - 1] * house;
      adults[0] = emerging;
    }
  }
  clock_gettime(CLOCK_MONOTONIC, &to);
  double sum = 0;
  for (int p = 0; p < count; p += 1)
    for (int i = brood_at; i < size; i += 1) sum += values[(size_t)p * size + i];
  printf("%.3f %.17g\n", (to.tv_sec - from.tv_sec) * 1e3 + (to.tv_nsec - from.tv_nsec) / 1e6, sum);
  return 0;
}
