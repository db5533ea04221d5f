"""The derivative and the Jacobian of a compiled model in C, called from Python."""

import ctypes

import numpy as np

DOUBLES = np.ctypeslib.ndpointer(np.float64, flags="C_CONTIGUOUS")


class Compiled:
    """What `model.Model` does, by the shared library built from the emitted C."""

    def __init__(self, library, tables):
        self.states, self.places = tables["states"], len(tables["jacobian"]["row"])
        self.row = np.array(tables["jacobian"]["row"])
        self.column = np.repeat(np.arange(self.states), np.diff(tables["jacobian"]["columnStart"]))
        self.c = ctypes.CDLL(library)
        for name in ("model_derivative", "model_jacobian"):
            function = getattr(self.c, name)
            function.argtypes, function.restype = [ctypes.c_double, DOUBLES, DOUBLES, DOUBLES], None

    def settle(self, regime):
        self.regime = np.ascontiguousarray(regime)

    def forget(self):
        self.c.model_forget()

    def derivative(self, since, y):
        slope = np.empty(self.states)
        self.c.model_derivative(since, np.ascontiguousarray(y), self.regime, slope)
        return slope

    def entries(self, since, y):
        values = np.empty(self.places)
        self.c.model_jacobian(since, np.ascontiguousarray(y), self.regime, values)
        return values

    def dense_jacobian(self, since, y):
        full = np.zeros((self.states, self.states))
        full[self.row, self.column] = self.entries(since, y)
        return full

    sparse_jacobian = dense_jacobian
