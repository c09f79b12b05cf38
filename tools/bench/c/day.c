/*
 * The whole day of the model as src/colony/engine/model.ts has it, with its noise: the same generator, the same
 * numbers in the same order. `given.h` holds the constants and is written by the benchmark. Reads particles from a
 * file, lives them through the days and writes them back; prints milliseconds and the sum of the log weights.
 */
#include <math.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>
#include "given.h"

enum { brood_days = 21, drone_days = 24, adult_days = 80, no_way = -1 };

typedef struct {
  uint32_t a, b, c, d;
  double spare;
  int waiting;
} stream;

static uint32_t spread(uint32_t h) {
  h = (h ^ (h >> 16)) * 0x85ebca6bu;
  h = (h ^ (h >> 13)) * 0xc2b2ae35u;
  return h ^ (h >> 16);
}

static void set_stream(stream *s, uint32_t seed, uint32_t what, uint32_t index, uint32_t day) {
  uint32_t h = spread(seed ^ 0x9e3779b9u);
  h = spread(h ^ ((what + 1) * 0x85ebca77u));
  h = spread(h ^ ((index + 1) * 0xc2b2ae3du));
  h = spread(h ^ ((day + 1) * 0x27d4eb2fu));
  s->a = spread(h + 0x6d2b79f5u);
  s->b = spread(h + 0xda56f3eau);
  s->c = spread(h + 0x47826ddfu);
  s->d = spread(h + 0xb4ade7d4u) | 1;
  s->waiting = 0;
}

static uint32_t turned(uint32_t x, int by) { return (x << by) | (x >> (32 - by)); }

static double next_unit(stream *s) {
  uint32_t result = turned(s->b * 5, 7) * 9, t = s->b << 9;
  s->c ^= s->a;
  s->d ^= s->b;
  s->b ^= s->c;
  s->a ^= s->d;
  s->c ^= t;
  s->d = turned(s->d, 11);
  return (result + 0.5) / 4294967296.0;
}

static double next_normal(stream *s) {
  if (s->waiting) {
    s->waiting = 0;
    return s->spare;
  }
  double radius = sqrt(-2 * log(next_unit(s))), angle = 2 * M_PI * next_unit(s);
  s->spare = radius * sin(angle);
  s->waiting = 1;
  return radius * cos(angle);
}

static double sum(const double *v, int from, int to) {
  double all = 0;
  for (int i = from; i < to; i += 1) all += v[i];
  return all;
}

static double year_day(double day) {
  double t = fmod(day + season_turn, 365.2425);
  return t < 0 ? t + 365.2425 : t;
}

static double reading(const double *table, double t) {
  int last = season_days - 1;
  if (t <= 0) return table[0];
  if (t >= last) return table[last];
  int from = (int)t;
  return table[from] + (t - from) * (table[from + 1] - table[from]);
}

static double share_on(double day, const double *v) {
  double t = year_day(day);
  double share = fmin(reading(season_rise, t - v[at_rise]), reading(season_fall, t - v[at_fall]));
  double floor = fmin(0.5, season_floor * exp((v[at_fall] - v[at_rise]) / 2 / season_floorDays));
  return floor + (1 - floor) * pow(share, exp(v[at_depth]));
}

static double free_cells(const double *v) {
  double usable = v[at_comb] * room_usable;
  double honey = fmin(v[at_honeyKg] / room_honeyKgPerCell, usable * room_honeyMost);
  double brood = sum(v + brood_at, 0, brood_days) * exp(v[at_sealedScale]);
  return fmax(0, usable - brood - honey - v[at_breadKg] / room_breadKgPerCell);
}

static double swarm_urge(double day, double share, double bees, double eggs, double free_now, double comb) {
  double days = eggs > 0 ? free_now / eggs : queen_roomyDays;
  double room = queen_crowdedUrge + (queen_roomyUrge - queen_crowdedUrge) * fmin(1, days / queen_roomyDays);
  double many = fmin(1, bees / queen_urgeBees), dense = fmin(2, bees / (comb * queen_coverBees));
  double season = pow(share, year_day(day) > season_peak ? queen_urgeAfter : queen_urgeSeason);
  return season * many * many * dense * dense * room;
}

static double way_chance(int way, int days_in, double urge, double season) {
  int last = chain_hazardDays[way] - 1;
  double hazard = chain_hazards[chain_hazardAt[way] + (days_in < last ? days_in : last)];
  int by = chain_scaledBy[way];
  return by == 0 ? hazard : hazard * (by == 1 ? urge : by == 2 ? season : 1);
}

static int guided_day(int state, int days_in, double urge, double unit, double *log_weight, double season) {
  int first = chain_firstWay[state], end = chain_firstWay[state + 1];
  double all = 0, rare = 0, other = 0, pushed = 1, passed = 0, left = 1;
  for (int way = first; way < end; way += 1) all += way_chance(way, days_in, urge, season);
  double scale = all > 1 ? 1 / all : 1;
  for (int way = first; way < end; way += 1) {
    double chance = scale * way_chance(way, days_in, urge, season);
    if (chain_rare[way]) rare += chance;
    else other += chance;
  }
  if (rare != 0) pushed = fmax(1, fmin(queen_guided, (1 - other) / 2 / rare));
  for (int way = first; way < end; way += 1) {
    double chance = scale * way_chance(way, days_in, urge, season);
    double push = chain_rare[way] ? pushed : 1;
    passed += push * chance;
    left -= chance;
    if (unit < passed) {
      *log_weight -= log(push);
      return way;
    }
  }
  if (pushed != 1) *log_weight += log(left / (1 - passed));
  return no_way;
}

static void swarm_leaves(double *v, double middle, stream *s) {
  double gone = 1 / (1 + exp(-(middle + queen_swarmSpread * next_normal(s))));
  double bees = sum(v + adults_at, 0, adult_days) * gone;
  for (int i = 0; i < adult_days; i += 1) v[adults_at + i] *= 1 - gone;
  v[at_drones] *= 1 - gone;
  v[at_honeyKg] = fmax(0, v[at_honeyKg] - bees * queen_swarmHoneyKg);
}

static double queen_day(double day, double *v, double share, double urge, stream *s) {
  double weight = 0;
  int way = guided_day((int)v[at_queen], (int)v[at_queenDays], urge, next_unit(s), &weight, share);
  if (way == no_way) {
    v[at_queenDays] += 1;
    return weight;
  }
  int event = chain_event[way], to = chain_to[way];
  if (event == event_swarm) swarm_leaves(v, queen_swarmLogit, s);
  else if (event == event_after) swarm_leaves(v, log(queen_afterSwarmShare / (1 - queen_afterSwarmShare)), s);
  else if (event == event_eggs) v[at_queenFrom] = day;
  int age = 0;
  while (age < brood_days && v[brood_at + age] < 1) age += 1;
  v[at_queen] = to == state_orphaned && age > chain_rescueDays ? state_none : to;
  v[at_queenDays] = v[at_queen] == state_none ? fmax(0, age - chain_rescueDays) : 0;
  return weight;
}

static double queen_share(double day, const double *v) {
  int state = (int)v[at_queen];
  if (!state_lays[state]) return 0;
  double laid = 1;
  if (state == state_swarm_sealed) laid = chain_slows_share;
  else if (state == state_swarm_open && v[at_queenDays] >= chain_slows_fromDay) laid = chain_slows_share;
  else if (state == state_failing) laid = chain_slows_failing;
  double since = day - v[at_queenFrom];
  return since < queen_rampDays ? laid * (since + 1) / queen_rampDays : laid;
}

static double misplaced_share(const double *v) {
  int state = (int)v[at_queen];
  if (!state_drones[state]) return 0;
  return state == state_drone_layer ? chain_slows_failing : chain_slows_share;
}

static double age_brood(double *v, double eggs) {
  double *brood = v + brood_at, emerging = brood[brood_days - 1] * emerges;
  for (int i = brood_days - 1; i > 0; i -= 1) brood[i] = brood[i - 1];
  brood[0] = eggs;
  brood[hatchAge] *= hatches;
  brood[sealAge] *= isSealed;
  return emerging;
}

static void age_drones(double *v, double share, double eggs) {
  double *brood = v + drone_brood_at, emerging = brood[drone_days - 1] * drones_survives;
  for (int i = drone_days - 1; i > 0; i -= 1) brood[i] = brood[i - 1];
  brood[0] = eggs;
  v[at_drones] = v[at_drones] * (share < drones_fromShare ? drones_drivenKept : drones_kept) + emerging;
}

static void age_adults(double *v, double worn, double hungry, double emerging) {
  double times = exp(v[at_lossLevel] + v[at_loss]);
  double house = exp(-times * (worn * houseLoss + (1 - worn) * winterLoss) - hungry);
  double field = exp(-times * (worn * fieldLoss + (1 - worn) * winterLoss) - hungry);
  double *adults = v + adults_at;
  double flight = floor(v[at_flightAge] + 0.5);
  int flying = (int)fmin(adult_days, flight), i = adult_days - 2;
  double oldest = fmin(1, fmax(0, (adult_days - v[at_flightAge]) / oldestSpread));
  adults[adult_days - 1] = (adults[adult_days - 1] + adults[adult_days - 2]) * (house + (field - house) * oldest);
  for (; i > flying; i -= 1) adults[i] = adults[i - 1] * field;
  for (; i > 0; i -= 1) adults[i] = adults[i - 1] * house;
  adults[0] = emerging;
}

static void stores_day(double *v, double share, double bees, double reared, double room) {
  double season = fmax(0, share - stores_leastShare) / (1 - stores_leastShare);
  double flow = exp(v[at_flow] - stores_flowMean);
  double wish = bees * season * flow * stores_nectarKg;
  double eaten = bees * stores_eatKg + reared * stores_rearKg;
  double kept = fmax(fmax(room * room_honeyKgPerCell, bees * queen_swarmHoneyKg - v[at_honeyKg]), 0);
  v[at_honeyKg] = fmax(0, v[at_honeyKg] + fmin(wish, eaten + kept) - eaten);
  double bread = v[at_breadKg] + bees * season * sqrt(flow) * stores_breadKg - reared * stores_rearBreadKg;
  v[at_breadKg] = fmin(fmax(0, bread), fmin(room_breadMostKg, v[at_comb] * room_breadMostKgPerCell));
}

static void comb_day(double *v, double share, double bees, double free_now, double wanted) {
  double most = v[at_combMost], comb = v[at_comb];
  if (comb >= most) return;
  double flow = fmin(1, share * exp(v[at_flow])), lacking = 1 - fmin(1, free_now / fmax(1, wanted));
  double wish = room_builtPerDay * fmin(1, bees / room_builderBees) * flow * lacking;
  double spare = fmax(0, v[at_honeyKg] - 2 * stores_hungryKg);
  double built = fmin(fmin(wish, most - comb), spare / room_waxKgPerCell);
  v[at_comb] = comb + built;
  v[at_honeyKg] -= built * room_waxKgPerCell;
}

static void move(int count, const int *offset, const double *middle, const double *kept, const double *push, double *v, stream *s) {
  for (int i = 0; i < count; i += 1) {
    double *where = v + offset[i];
    *where = middle[i] + kept[i] * (*where - middle[i]) + push[i] * next_normal(s);
  }
}

static void wander_on(int day, double *v, stream *s) {
  move(quick_count, quick_offset, quick_middle, quick_kept, quick_push, v, s);
  if (day % slow_days != 0) return;
  move(slow_count, slow_offset, slow_middle, slow_kept, slow_push, v, s);
  for (int i = 0; i < eyes_count; i += 1) {
    double *where = v + eyes_offset[i], pushed = eyes_push[i] * next_normal(s);
    *where = eyes_middle[i] + eyes_kept[i] * (*where - eyes_middle[i]) + pushed;
    v[eye_gap_at + i] = eyes_kept[i] * v[eye_gap_at + i] - pushed;
    v[eye_variance_at + i] = eyes_kept[i] * eyes_kept[i] * v[eye_variance_at + i] + eyes_push[i] * eyes_push[i];
  }
}

static double colony_day(int day, double *v, stream *s) {
  double share = share_on(day, v), bees = sum(v + adults_at, 0, adult_days);
  double could = capacity * exp(v[at_capacity] + v[at_laying]) * share * bees / (halfBees + bees);
  double free_now = free_cells(v);
  double comb = fmax(v[at_comb], v[at_combMost] / 2);
  double urge = swarm_urge(day, share, bees * exp(v[at_beesScale]), could, free_now, comb);
  double weight = queen_day(day, v, share, urge, s);
  double laid = fmin(could * queen_share(day, v), free_now * room_found / exp(v[at_sealedScale]));
  double drones = laid * (share < drones_fromShare || bees < drones_leastBees ? 0 : drones_share);
  double each = sum(v + brood_at, 0, sealAge) / fmax(1, bees);
  double worn = fmin(1, fmax(share * wornLeast, (each - wornFrom) / (wornBrood - wornFrom)));
  double emerging = age_brood(v, laid - drones);
  age_drones(v, share, drones + could * misplaced_share(v));
  age_adults(v, worn, v[at_honeyKg] < stores_hungryKg ? stores_hungryLoss : 0, emerging);
  v[at_flightAge] += 1 - worn * v[at_flightAge] / forageAge;
  double cells = could * exp(v[at_sealedScale]);
  stores_day(v, share, bees, v[brood_at + sealAge], free_now - cells);
  comb_day(v, share, bees, free_now, cells * queen_roomyDays);
  wander_on(day, v, s);
  return weight;
}

int main(int argc, char **argv) {
  if (argc < 6) return 2;
  int count = atoi(argv[2]), from = atoi(argv[3]), days = atoi(argv[4]), seed = atoi(argv[5]);
  size_t numbers = (size_t)count * particle_size;
  double *values = malloc(numbers * sizeof *values), weight = 0;
  FILE *file = fopen(argv[1], "r+b");
  if (values == NULL || file == NULL || fread(values, sizeof *values, numbers, file) != numbers) return 3;
  struct timespec begin, end;
  clock_gettime(CLOCK_MONOTONIC, &begin);
  for (int p = 0; p < count; p += 1) {
    stream s;
    for (int day = from; day < from + days; day += 1) {
      set_stream(&s, seed, 1, p, day);
      weight += colony_day(day, values + (size_t)p * particle_size, &s);
    }
  }
  clock_gettime(CLOCK_MONOTONIC, &end);
  rewind(file);
  if (fwrite(values, sizeof *values, numbers, file) != numbers || fclose(file) != 0) return 4;
  printf("%.3f %.17g\n", (end.tv_sec - begin.tv_sec) * 1e3 + (end.tv_nsec - begin.tv_nsec) / 1e6, weight);
  return 0;
}
