/*
 * A recorded year integrated by Leat's own method in C: loops, coefficients and numbers of the step control are written from
 * the source (method.c), and so are rates and partials (model.c). What stands here is the course of a step, of its control
 * and of a segment, function by function as in packages/core/src/solve: rodas-step, step-control, short-stretch, rosenbrock.
 *
 *   rodas YEAR OUT TOLERANCE REPEATS
 *
 * Extents are integrated too. Prints one line of JSON; writes the state at the end of each day, then the extents, to OUT
 * (doubles).
 */
#include "model.c"
#include "method.c"
#include "year.c"

static double relative, absolute[STATES];
static double y[STATES], next[STATES], point[STATES], slope[STATES], first_slope[STATES], slope_by_time[STATES];
static double x[RATES], gain[RATES], rates_by_time[RATES], rates[STAGES * RATES], stage[STAGES * STATES];
static double minus_jacobian[ENTRIES], factors[ENTRIES], inverse[STATES], work[STATES];
static struct { long steps, rejected, passed, evaluations, jacobians, factorisations; } did;
/* What holds during the segment, and when it began. */
static const double *regime;
static double segment_from;
static const double one = 1;

static void evaluate(double t, const double *at, double *into) {
  model_rates(t - segment_from, at, regime, into);
  did.evaluations++;
}

static void moved_by(const double *by, double *into) {
  loop_sums(moved, by, into, moves_start, moves_left, moves_right, STATES, 0);
}

/* What point moves, by the partials, is added to the gain of the extents. */
static void spread(void) {
  loop_sums(dr, point, gain, dependence_start, dependence_entry, dependence_column, RATES, 1);
}

static double error_norm(const double *of, const double *other) {
  return sqrt(loop_squares(of, y, other, absolute, STATES, relative) / STATES);
}

/* --- A step: rodas-step.ts --- */

static int begin_step(double t) {
  look(t - segment_from, y, regime);
  rates_seen(regime, rates);
  partials_seen(regime);
  model_by_time(regime, rates, rates_by_time);
  did.evaluations++;
  did.jacobians++;
  if (!loop_finite(rates, RATES) || !loop_finite(dr, PARTIALS) || !loop_finite(rates_by_time, RATES)) return 0;
  moved_by(rates, first_slope);
  moved_by(rates_by_time, slope_by_time);
  loop_sums(moved, dr, minus_jacobian, jacobian_start, jacobian_left, jacobian_right, ENTRIES, 2);
  return 1;
}

static int factor(double h) {
  memcpy(factors, minus_jacobian, sizeof factors);
  for (int i = 0; i < STATES; i++) factors[lu_diagonal[i]] += 1 / (h * GAMMA);
  did.factorisations++;
  return loop_factor(factors, inverse, work, lu_start, lu_column, lu_diagonal, STATES) < 0;
}

static int attempt(double t, double h) {
  double weights[STAGES];
  if (!factor(h)) return 0;
  for (int s = 0; s < STAGES; s++) {
    double *u = stage + s * STATES;
    if (s > 0) {
      if (s < GROWS_FROM) loop_combine(y, A[s], stage, point, STATES, s);
      else loop_combine(point, &one, u - STATES, point, STATES, 1);
      evaluate(t + ALPHA[s] * h, point, rates + s * RATES);
      moved_by(rates + s * RATES, slope);
    }
    for (int j = 0; j < s; j++) weights[j] = C[s][j] / h;
    loop_combine(s == 0 ? first_slope : slope, weights, stage, u, STATES, s);
    const double share = TIME_SHARE[s] * h;
    if (TIME_SHARE[s] != 0) loop_combine(u, &share, slope_by_time, u, STATES, 1);
    loop_solve(u, factors, inverse, work, lu_start, lu_column, lu_diagonal, lu_order, STATES);
    if (!loop_finite(u, STATES)) return 0;
  }
  loop_combine(point, &one, stage + (STAGES - 1) * STATES, next, STATES, 1);
  return 1;
}

/* What the extents gain over the step. */
static int extents(double h) {
  double weights[STAGES], share = 0;
  for (int s = 0; s < STAGES; s++) {
    weights[s] = RIGHT_WEIGHTS[s] * h * GAMMA;
    share += weights[s] * TIME_SHARE[s];
  }
  share *= h;
  memset(gain, 0, sizeof gain);
  loop_combine(gain, &share, rates_by_time, gain, RATES, 1);
  loop_combine(gain, weights, rates, gain, RATES, STAGES);
  memset(point, 0, sizeof point);
  loop_combine(point, weights, stage, point, STATES, STAGES);
  spread();
  return loop_finite(gain, RATES);
}

/* --- Its control: step-control.ts --- */

/* The natural step is below 0 while none is known. */
static struct {
  double natural, opening, retry, last_step, last_error;
  int refused_before, refused, opens;
} control;

static void restart(void) {
  control.natural = -1;
  control.opening = INFINITY;
}

static void begin_segment(void) {
  control.last_step = 0;
  control.refused = 0;
  control.opens = 1;
  if (control.natural >= 0) control.natural = fmin(control.natural, control.opening);
}

static double fit(double remaining, double natural) {
  if (remaining <= natural * LAST_SEGMENT) return remaining;
  return remaining < natural * 2 ? remaining / 2 : natural;
}

static void learn_opening(double step, double following) {
  const int cut_short = !control.refused && control.natural >= 0 && step < control.natural;
  const int habit = control.opening < INFINITY || (control.refused && control.refused_before);
  if (habit) control.opening = cut_short ? fmax(following, control.opening) : following;
  control.refused_before = control.refused;
  control.opens = 0;
}

static void accept_step(double step, double error) {
  double by = fourth_root(error) / SAFETY;
  if (control.last_step > 0)
    by = fmax(by, control.last_step / step * fourth_root(error * error / control.last_error) / SAFETY);
  double following = step / fmin(MOST_SHRINK, fmax(1 / MOST_GROWTH, by));
  if (control.opens) learn_opening(step, following);
  if (control.refused) following = fmin(following, step);
  else if (control.natural >= 0 && step < control.natural) following = fmax(following, control.natural);
  control.natural = following;
  control.last_step = step;
  control.last_error = fmax(LEAST_ERROR, error);
  control.refused = 0;
}

/* The next try after a step that was refused for its error, or that failed without one (NaN). */
static void refuse_step(double step, double error) {
  const double least = control.refused ? AGAIN : 1 / SAFETY;
  const double by = error < INFINITY ? fmin(MOST_SHRINK, fmax(least, fourth_root(error) / SAFETY)) : FAILURE_SHRINK;
  control.natural = control.retry = step / by;
  control.refused = 1;
}

static double first_step(double span) {
  memcpy(point, first_slope, sizeof point);
  memcpy(gain, rates_by_time, sizeof gain);
  spread();
  moved_by(gain, slope);
  const double amount = error_norm(y, y), speed = error_norm(first_slope, y), turn = error_norm(slope, y);
  double step = span;
  if (turn > 0) {
    const double scale = speed / turn;
    step = speed > 0 ? scale * fourth_root(AIM / (speed * scale)) : sqrt(2 * AIM / turn);
  }
  if (amount > 1 && speed > 0) step = fmin(step, amount / speed);
  return control.natural = fmin(step, span);
}

/* --- A stretch far shorter than a step: short-stretch.ts --- */

static void sum_of_slopes(const double *w, double h) {
  const double *second = rates + RATES, *third = second + RATES;
  for (int k = 0; k < RATES; k++) gain[k] = h * (w[0] * rates[k] + w[1] * second[k] + w[2] * third[k]);
  moved_by(gain, slope);
}

static int pass(double from, double to) {
  const double h = to - from;
  double whole[3];
  evaluate(from, y, rates);
  moved_by(rates, first_slope);
  for (int i = 0; i < STATES; i++) point[i] = y[i] + 0.5 * h * first_slope[i];
  evaluate(from + 0.5 * h, point, rates + RATES);
  moved_by(rates + RATES, slope);
  for (int i = 0; i < STATES; i++) point[i] = slope[i] - first_slope[i];
  if (error_norm(point, y) > error_norm(first_slope, y)) return 0;
  for (int i = 0; i < STATES; i++) point[i] = y[i] + 0.75 * h * slope[i];
  evaluate(from + 0.75 * h, point, rates + 2 * RATES);
  sum_of_slopes(DIFFERENCE, h);
  if (!(error_norm(slope, y) <= MOST_ERROR)) return 0;
  short_weights(whole);
  sum_of_slopes(whole, h);
  for (int i = 0; i < STATES; i++) y[i] += slope[i];
  for (int k = 0; k < RATES; k++) x[k] += gain[k];
  did.passed++;
  return 1;
}

/* --- A segment: rosenbrock.ts --- */

static void give_up(const char *why, double t) {
  fprintf(stderr, "%s on day %g\n", why, t);
  exit(1);
}

static int try_step(double t, double h) {
  const double error = attempt(t, h) && extents(h) ? error_norm(stage + (STAGES - 1) * STATES, next) : NAN;
  if (error <= 1) {
    accept_step(h, error);
    return 1;
  }
  refuse_step(h, error);
  did.rejected++;
  return 0;
}

static void advance(double from, double to) {
  if (to > from && to - from <= SHORT * control.natural && pass(from, to)) return;
  begin_segment();
  int tries = 0;
  for (double t = from; t < to;) {
    if (!begin_step(t)) give_up("not finite", t);
    const double least = fmax(LEAST_OF_TIME * fabs(t), LEAST_OF_SEGMENT * (to - from));
    for (;;) {
      if (tries++ >= MAX_STEPS) give_up("too many steps", t);
      const double remaining = to - t;
      const double h = fit(remaining, control.natural >= 0 ? control.natural : first_step(remaining));
      if (try_step(t, h)) {
        t = h == remaining ? to : t + h;
        break;
      }
      if (!(control.retry > least)) give_up("the step is too small", t);
    }
    memcpy(y, next, sizeof y);
    for (int k = 0; k < RATES; k++) x[k] += gain[k];
    did.steps++;
  }
}

static void run(double *out) {
  memcpy(y, start_state(), sizeof y);
  memset(x, 0, sizeof x);
  memset(&did, 0, sizeof did);
  memset(&control, 0, sizeof control);
  restart();
  model_forget();
  int day = 0;
  for (int i = 0; i < segments; i++) {
    const double *here = segment(i), to = here[TO];
    if (here[JUMP] >= 0) {
      jump(year + (long)here[JUMP], y);
      restart();
    }
    regime = here + FIXED;
    segment_from = here[FROM];
    advance(here[FROM], to);
    if (to == (double)(long)to) memcpy(out + (long)STATES * day++, y, sizeof y);
  }
}

int main(int argc, char **argv) {
  if (argc != 5) { fprintf(stderr, "usage: rodas YEAR OUT TOLERANCE REPEATS\n"); return 2; }
  open_year(argv[1]);
  relative = atof(argv[3]);
  for (int i = 0; i < STATES; i++) absolute[i] = relative * tolerances()[i];
  double *out = room_for_days();
  printf("{\"milliseconds\":[");
  for (int i = 0; i < atoi(argv[4]); i++) {
    const double began = processor_time();
    run(out);
    printf("%s%.4f", i ? "," : "", processor_time() - began);
  }
  printf("],\"steps\":%ld,\"rejected\":%ld,\"passed\":%ld,\"evaluations\":%ld,\"jacobians\":%ld,\"factorisations\":%ld}\n",
         did.steps, did.rejected, did.passed, did.evaluations, did.jacobians, did.factorisations);
  return write_out(argv[2], out, x, RATES);
}
