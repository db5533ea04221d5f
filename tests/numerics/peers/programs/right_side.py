"""The right side of a recorded year, in NumPy or in C."""

import json
import sys

import numpy as np

HEADER, FIXED = 4, 3


def open_year(folder, right):
    """The year as it is packed, its segments (from, to, jump, regime) and the model's right side."""
    sys.path.insert(0, folder)
    year = np.fromfile(f"{folder}/year.bin")
    count, size, states = (int(n) for n in year[:3])
    table = year[HEADER + 2 * states :][: count * (FIXED + size)].reshape(count, FIXED + size)
    if right == "numpy":
        from model import Model

        return year, table, Model(f"{folder}/model.json")
    from compiled import Compiled

    with open(f"{folder}/model.json") as file:
        return year, table, Compiled(f"{folder}/libmodel.so", json.load(file))
