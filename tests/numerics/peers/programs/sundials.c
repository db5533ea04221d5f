/*
 * A recorded year integrated by SUNDIALS, with the derivative and the Jacobian of the compiled model.
 *
 *   sundials YEAR OUT METHOD FORCING TOLERANCE REPEATS
 *
 * METHOD   cvode-klu, cvode-dense (BDF, orders 1 to 5) or arkode-klu (diagonally implicit Runge-Kutta,
 *          order 4); all with the analytic Jacobian
 * FORCING  restart: begin again at every segment; stop: end a step at every change of forcing and go on
 *          with the history; across: step over changes of forcing. All begin again after a jump of the state.
 * Prints one line of JSON; writes the state at the end of each day to OUT (doubles).
 */
#include <arkode/arkode_arkstep.h>
#include <cvode/cvode.h>
#include <nvector/nvector_serial.h>
#include <sunlinsol/sunlinsol_dense.h>
#include <sunlinsol/sunlinsol_klu.h>
#include <sunmatrix/sunmatrix_dense.h>
#include <sunmatrix/sunmatrix_sparse.h>
#include "model.c"
#include "year.c"

/* The segments among which the forcing is looked up, and the one last found. */
static int first, last, current;

static void check(int flag, const char *what) {
  if (flag < 0) {
    fprintf(stderr, "%s failed: %d\n", what, flag);
    exit(1);
  }
}

static const double *regime_at(double t, double *since) {
  while (current < last && t >= segment(current)[TO]) current++;
  while (current > first && t < segment(current)[FROM]) current--;
  *since = t - segment(current)[FROM];
  return segment(current) + FIXED;
}

static int slope_of(double t, N_Vector y, N_Vector slope, void *data) {
  (void)data;
  double since;
  const double *regime = regime_at(t, &since);
  model_derivative(since, N_VGetArrayPointer(y), regime, N_VGetArrayPointer(slope));
  return 0;
}

static int sparse_jacobian(double t, N_Vector y, N_Vector fy, SUNMatrix J, void *data, N_Vector a, N_Vector b, N_Vector c) {
  (void)fy; (void)data; (void)a; (void)b; (void)c;
  double since;
  const double *regime = regime_at(t, &since);
  sunindextype *start = SUNSparseMatrix_IndexPointers(J), *row = SUNSparseMatrix_IndexValues(J);
  for (int j = 0; j <= STATES; j++) start[j] = column_start[j];
  for (int e = 0; e < PLACES; e++) row[e] = place_row[e];
  model_jacobian(since, N_VGetArrayPointer(y), regime, SUNSparseMatrix_Data(J));
  return 0;
}

static int dense_jacobian(double t, N_Vector y, N_Vector fy, SUNMatrix J, void *data, N_Vector a, N_Vector b, N_Vector c) {
  (void)fy; (void)data; (void)a; (void)b; (void)c;
  static double values[PLACES];
  double since;
  const double *regime = regime_at(t, &since);
  model_jacobian(since, N_VGetArrayPointer(y), regime, values);
  for (int j = 0; j < STATES; j++) {
    double *column = SUNDenseMatrix_Column(J, j);
    for (int e = column_start[j]; e < column_start[j + 1]; e++) column[place_row[e]] = values[e];
  }
  return 0;
}

typedef struct {
  int arkode;
  void *memory;
  N_Vector y;
} Solver;

static void stop_at(Solver s, double to) {
  if (s.arkode) check(ARKStepSetStopTime(s.memory, to), "ARKStepSetStopTime");
  else check(CVodeSetStopTime(s.memory, to), "CVodeSetStopTime");
}

static void begin(Solver s, double from) {
  if (s.arkode) check(ARKStepReInit(s.memory, NULL, slope_of, from, s.y), "ARKStepReInit");
  else check(CVodeReInit(s.memory, from, s.y), "CVodeReInit");
}

static long total[4], defeats;

/* Adds the work since it last began. */
static void count(Solver s) {
  long n[4] = {0};
  if (s.arkode) {
    long explicit;
    ARKStepGetNumSteps(s.memory, &n[0]);
    ARKStepGetNumRhsEvals(s.memory, &explicit, &n[1]);
    ARKStepGetNumJacEvals(s.memory, &n[2]);
    ARKStepGetNumLinSolvSetups(s.memory, &n[3]);
  } else {
    CVodeGetNumSteps(s.memory, &n[0]);
    CVodeGetNumRhsEvals(s.memory, &n[1]);
    CVodeGetNumJacEvals(s.memory, &n[2]);
    CVodeGetNumLinSolvSetups(s.memory, &n[3]);
  }
  for (int i = 0; i < 4; i++) total[i] += n[i];
}

/* Goes to a time. A change of forcing that it was not told of may defeat it: it begins again there, once. */
static void go(Solver s, double to) {
  double reached;
  for (int again = 0;; again++) {
    const int flag = s.arkode ? ARKStepEvolve(s.memory, to, s.y, &reached, ARK_NORMAL)
                              : CVode(s.memory, to, s.y, &reached, CV_NORMAL);
    if (flag >= 0) return;
    if (again) check(flag, "the integrator");
    defeats++;
    count(s);
    begin(s, reached);
  }
}

static void run(Solver s, const char *forcing, double *out) {
  double *y = N_VGetArrayPointer(s.y);
  memcpy(y, start_state(), STATES * sizeof(double));
  memset(total, 0, sizeof total);
  defeats = 0;
  model_forget();
  const int restart = strcmp(forcing, "restart") == 0, across = strcmp(forcing, "across") == 0;
  int day = 0;
  for (int i = 0; i < segments;) {
    /* One piece: the segments up to the next jump, or one when it begins again at each. */
    int end = i;
    while (!restart && end + 1 < segments && segment(end + 1)[JUMP] < 0) end++;
    if (segment(i)[JUMP] >= 0) jump(year + (long)segment(i)[JUMP], y);
    first = current = i;
    last = across ? end : i;
    begin(s, segment(i)[FROM]);
    if (across) stop_at(s, segment(end)[TO]);
    for (; i <= end; i++) {
      const double to = segment(i)[TO];
      const int boundary = to == (double)(long)to;
      if (!across) {
        first = last = current = i;
        stop_at(s, to);
      } else if (!boundary && i < end) continue;
      go(s, to);
      if (boundary) memcpy(out + (long)STATES * day++, y, STATES * sizeof(double));
    }
    count(s);
  }
}

static Solver open(const char *method, double tolerance, SUNContext context) {
  const int dense = strcmp(method, "cvode-dense") == 0;
  Solver s = {strncmp(method, "arkode", 6) == 0, NULL, N_VNew_Serial(STATES, context)};
  N_Vector absolute = N_VNew_Serial(STATES, context);
  for (int i = 0; i < STATES; i++) NV_Ith_S(absolute, i) = tolerance * tolerances()[i];
  memcpy(N_VGetArrayPointer(s.y), start_state(), STATES * sizeof(double));
  SUNMatrix J = dense ? SUNDenseMatrix(STATES, STATES, context)
                      : SUNSparseMatrix(STATES, STATES, PLACES, CSC_MAT, context);
  SUNLinearSolver linear = dense ? SUNLinSol_Dense(s.y, J, context) : SUNLinSol_KLU(s.y, J, context);
  if (!dense) check(SUNLinSol_KLUSetOrdering(linear, 0), "SUNLinSol_KLUSetOrdering"); /* AMD */
  if (s.arkode) {
    s.memory = ARKStepCreate(NULL, slope_of, segment(0)[FROM], s.y, context);
    check(ARKStepSVtolerances(s.memory, tolerance, absolute), "ARKStepSVtolerances");
    check(ARKStepSetLinearSolver(s.memory, linear, J), "ARKStepSetLinearSolver");
    check(ARKStepSetJacFn(s.memory, sparse_jacobian), "ARKStepSetJacFn");
    check(ARKStepSetMaxNumSteps(s.memory, 10000000), "ARKStepSetMaxNumSteps");
    check(ARKStepSetOrder(s.memory, 4), "ARKStepSetOrder");
  } else {
    s.memory = CVodeCreate(CV_BDF, context);
    check(CVodeInit(s.memory, slope_of, segment(0)[FROM], s.y), "CVodeInit");
    check(CVodeSVtolerances(s.memory, tolerance, absolute), "CVodeSVtolerances");
    check(CVodeSetLinearSolver(s.memory, linear, J), "CVodeSetLinearSolver");
    check(CVodeSetJacFn(s.memory, dense ? dense_jacobian : sparse_jacobian), "CVodeSetJacFn");
    check(CVodeSetMaxNumSteps(s.memory, 10000000), "CVodeSetMaxNumSteps");
  }
  return s;
}

int main(int argc, char **argv) {
  if (argc != 7) { fprintf(stderr, "usage: sundials YEAR OUT METHOD FORCING TOLERANCE REPEATS\n"); return 2; }
  open_year(argv[1]);
  double *out = room_for_days();
  SUNContext context;
  check(SUNContext_Create(NULL, &context), "SUNContext_Create");
  Solver s = open(argv[3], atof(argv[5]), context);
  printf("{\"milliseconds\":[");
  for (int i = 0; i < atoi(argv[6]); i++) {
    const double began = processor_time();
    run(s, argv[4], out);
    printf("%s%.4f", i ? "," : "", processor_time() - began);
  }
  printf("],\"steps\":%ld,\"evaluations\":%ld,\"jacobians\":%ld,\"factorisations\":%ld,\"defeats\":%ld}\n", total[0], total[1], total[2], total[3], defeats);
  return write_out(argv[2], out, NULL, 0);
}
