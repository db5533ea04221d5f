"""A recorded year integrated by SciPy.

    scipy_year.py FOLDER OUT METHOD RIGHT FORCING TOLERANCE REPEATS [MOST]

FOLDER   holds year.bin, model.json, processes.py, and libmodel.so for RIGHT = c
METHOD   lsoda (scipy.integrate.ode), bdf or radau (solve_ivp); all with the analytic Jacobian, sparse for bdf and radau
RIGHT    numpy or c
FORCING  restart: begin again at every segment; across: step over changes of forcing, begin again after jumps
MOST     ends by SIGXCPU after so many s of processor time
Prints one line of JSON; writes the state at the end of each day to OUT (doubles).
"""

import json
import resource
import sys
import time
import warnings

import numpy as np
from scipy.integrate import ode, solve_ivp

from right_side import FIXED, HEADER, open_year

folder, out, method, right, forcing, tolerance, repeats = sys.argv[1:8]
tolerance, repeats = float(tolerance), int(repeats)
if len(sys.argv) > 8:
    resource.setrlimit(resource.RLIMIT_CPU, (int(sys.argv[8]), int(sys.argv[8]) + 1))
np.seterr(all="ignore")

year, table, model = open_year(folder, right)
states, segments = model.states, len(table)
absolute = tolerance * year[HEADER : HEADER + states]
start = year[HEADER + states : HEADER + 2 * states]


class Forcing:
    """The regime at a time, among some segments."""

    def __init__(self):
        self.current = -1

    def among(self, first, last):
        self.first, self.last = first, last
        self.settle(first)

    def settle(self, i):
        if i != self.current:
            self.current = i
            self.origin, self.end = table[i, 0], table[i, 1]
            model.settle(table[i, FIXED:])

    def since(self, t):
        while self.current < self.last and t >= self.end:
            self.settle(self.current + 1)
        while self.current > self.first and t < self.origin:
            self.settle(self.current - 1)
        return t - self.origin


forced = Forcing()
counts = {"evaluations": 0, "jacobians": 0}


def slope(t, y):
    counts["evaluations"] += 1
    return model.derivative(forced.since(t), y)


def dense(t, y):
    counts["jacobians"] += 1
    return model.dense_jacobian(forced.since(t), y)


def sparse(t, y):
    counts["jacobians"] += 1
    return model.sparse_jacobian(forced.since(t), y)


def jump(at, y):
    at = int(at)
    rows, before = int(year[at]), year[at + 1 : at + 1 + states]
    off, after = y - before, y.copy()
    at += 1 + states
    for _ in range(rows):
        state, value, slopes = int(year[at]), year[at + 1], int(year[at + 2])
        pairs = year[at + 3 : at + 3 + 2 * slopes].reshape(-1, 2)
        after[state] = value + pairs[:, 1] @ off[pairs[:, 0].astype(int)]
        at += 3 + 2 * slopes
    return after


def lsoda(y, begin, times):
    solver = ode(slope, dense).set_integrator(
        "lsoda", with_jacobian=True, rtol=tolerance, atol=absolute, nsteps=10_000_000
    )
    solver.set_initial_value(y, begin)
    reached = []
    for t in times:
        reached.append(solver.integrate(t).copy())
        if not solver.successful():
            raise ArithmeticError("lsoda failed")
    return reached


def implicit(y, begin, times):
    solution = solve_ivp(
        slope, (begin, times[-1]), y, method={"bdf": "BDF", "radau": "Radau"}[method], jac=sparse if right == "numpy" else dense,
        t_eval=times, rtol=tolerance, atol=absolute,
    )
    if not solution.success:
        raise ArithmeticError(solution.message)
    return list(solution.y.T)


def run():
    model.forget()
    y, reached, i = start, [], 0
    while i < segments:
        end = i
        if forcing == "across":
            while end + 1 < segments and table[end + 1, 2] < 0:
                end += 1
        if table[i, 2] >= 0:
            y = jump(table[i, 2], y)
        forced.among(i, end)
        times = [t for t in table[i : end + 1, 1] if t == int(t) or t == table[end, 1]]
        states_at = (lsoda if method == "lsoda" else implicit)(y, table[i, 0], times)
        reached.extend(state for t, state in zip(times, states_at) if t == int(t))
        y, i = states_at[-1], end + 1
    return np.array(reached)


milliseconds = []
with warnings.catch_warnings():
    warnings.simplefilter("error", UserWarning)
    for _ in range(repeats):
        counts["evaluations"] = counts["jacobians"] = 0
        began = time.process_time()
        result = run()
        milliseconds.append((time.process_time() - began) * 1e3)
result.tofile(out)
print(json.dumps({"milliseconds": milliseconds, **counts}))
