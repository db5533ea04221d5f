/* A recorded year as pack-year.ts packs it: its segments, its jumps, and what is written of a run. After model.c. */
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

enum { HEADER = 4, FROM = 0, TO = 1, JUMP = 2, FIXED = 3 };
static double *year;
static int segments, size, days;

static const double *segment(int i) { return year + HEADER + 2 * STATES + (long)i * size; }

/* Absolute tolerances at a relative one of 1, and the state at the start. */
static const double *tolerances(void) { return year + HEADER; }
static const double *start_state(void) { return year + HEADER + STATES; }

/* y = value + slopes x (y - before), for the states that a posting moves. */
static void jump(const double *at, double *y) {
  static double off[STATES];
  const int rows = (int)*at++;
  for (int s = 0; s < STATES; s++) off[s] = y[s] - at[s];
  at += STATES;
  for (int i = 0; i < rows; i++) {
    const int state = (int)at[0], slopes = (int)at[2];
    double value = at[1];
    at += 3;
    for (int k = 0; k < slopes; k++, at += 2) value += at[1] * off[(int)at[0]];
    y[state] = value;
  }
}

static void open_year(const char *path) {
  FILE *file = fopen(path, "rb");
  if (!file) { perror(path); exit(1); }
  fseek(file, 0, SEEK_END);
  const long bytes = ftell(file);
  rewind(file);
  year = malloc((size_t)bytes);
  if (!year || fread(year, 1, (size_t)bytes, file) != (size_t)bytes) { perror(path); exit(1); }
  fclose(file);
  segments = (int)year[0];
  size = FIXED + REGIME;
  days = (int)year[3];
  if (year[1] != REGIME || year[2] != STATES) { fprintf(stderr, "this year is of another model\n"); exit(2); }
}

static double *room_for_days(void) {
  double *out = calloc((size_t)days * STATES, sizeof(double));
  if (!out) { perror("calloc"); exit(1); }
  return out;
}

/* Time of the processor, ms. */
static double processor_time(void) {
  struct timespec now;
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
  return now.tv_sec * 1e3 + now.tv_nsec * 1e-6;
}

/* Writes the states of all days, and what else there is. */
static int write_out(const char *path, const double *out, const double *more, size_t count) {
  const size_t all = (size_t)days * STATES;
  FILE *file = fopen(path, "wb");
  if (!file || fwrite(out, sizeof(double), all, file) != all || fwrite(more, sizeof(double), count, file) != count) {
    perror(path);
    return 1;
  }
  return fclose(file);
}
