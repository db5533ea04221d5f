"""Slopes and entries of the Jacobian of a compiled model at given points.

    evaluate.py FOLDER RIGHT POINTS OUT

RIGHT    numpy or c
POINTS   doubles, for each point: number of the segment, time since its start, state
Writes for each point the slope of every state, then the entries of the Jacobian column by column.
"""

import sys

import numpy as np

from right_side import FIXED, open_year

folder, right, points, out = sys.argv[1:5]
np.seterr(all="ignore")
_, table, model = open_year(folder, right)
results = []
for point in np.fromfile(points).reshape(-1, 2 + model.states):
    model.settle(table[int(point[0]), FIXED:])
    model.forget()
    results.extend([model.derivative(point[1], point[2:]), model.entries(point[1], point[2:])])
np.concatenate(results).tofile(out)
