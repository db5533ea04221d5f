"""The derivative and the Jacobian of a compiled model in NumPy, each process at all its places at once."""

import json
from types import SimpleNamespace

import numpy as np
from scipy.sparse import csc_matrix, csr_matrix

import processes as written

CONSTANTS = ("k1", "k2", "ammonium", "water", "proton", "calcite")


def hydrogen_ion(alkalinity, carbon, ammonia, k, guess):
    """Newton in ln h in all vessels at once, from the last root; as chemistry/acid-base.ts but for its bracket."""
    h = guess
    for _ in range(100):
        excess = written.alkalinityAt(h, carbon, ammonia, k) - alkalinity
        step = -excess / (written.alkalinitySlope(h, carbon, ammonia, k) * h)
        size = np.abs(step).max()
        h = h + h * step if size < 0.01 else h * np.exp(np.clip(step, -20, 20))
        if size < 1e-8:
            return h
    return np.full_like(h, np.nan)


class Model:
    def __init__(self, path):
        with open(path) as file:
            t = json.load(file)
        self.states, self.rates, self.vessel_count = t["states"], t["rates"], t["vesselCount"]
        self.molar = t["molarNitrogen"]
        self.each, self.dissolved = t["water"], t["dissolved"]
        self.derived, self.speciation = t["derived"], t["speciation"]
        self.volume_at, self.slope_at, self.constants_at = t["volume"], t["slope"], t["constants"]
        self.water = self.each * self.vessel_count
        inside = [s for s in t["streams"] if s["from"] >= 0]
        outside = [s for s in t["streams"] if s["from"] < 0]
        spread = np.arange(self.each)
        self.inside_flow = np.array([s["flow"] for s in inside], dtype=int)
        self.inside_from = np.array([s["from"] for s in inside], dtype=int)
        self.outside_flow = np.array([s["flow"] for s in outside], dtype=int)
        self.outside_source = (np.array([s["source"] for s in outside], dtype=int)[:, None] + spread).astype(int)
        rows = [s["row"] + spread for s in inside + outside]
        slots = [s["slot"] + spread for s in inside]
        self.groups = []
        for g in t["groups"]:
            rate, partials = written.processes[g["id"]]
            at, slot, vessel = np.array(g["at"]).T, np.array(g["slot"]), np.array(g["vessel"])
            coefficients = np.array(g["coefficients"])[:, None] + np.arange(g["count"])
            chemical = [m for m, kind in enumerate(g["kind"]) if kind >= 2]
            self.groups.append(
                SimpleNamespace(
                    rate=rate, partials=partials, at=list(at), kind=g["kind"], vessel=vessel,
                    volumetric=g["volumetric"], coefficients=coefficients.T, chemical=chemical,
                )
            )
            rows.append(np.array(g["row"]))
            for m, kind in enumerate(g["kind"]):
                slots.extend([slot[:, 3 * m + c] for c in range(3 if kind >= 2 else 1)])
        # r in the order of computation, and S^T with its columns in that order.
        order = np.concatenate(rows)
        moves = t["moves"]
        transposed = csr_matrix((moves["coefficient"], moves["rate"], moves["start"]), (self.states, self.rates))
        self.moves = transposed[:, order]
        # Partials in the order of computation, and what turns them into the entries of the Jacobian.
        slots = np.concatenate(slots)
        j = t["jacobian"]
        summed = csr_matrix((j["coefficient"], j["partial"], j["termStart"]), (len(j["row"]), t["partials"]))
        gather = csr_matrix((np.ones(len(slots)), (slots, np.arange(len(slots)))), (t["partials"], len(slots)))
        self.places = (summed @ gather).tocsr()
        self.row, self.column = np.array(j["row"]), np.array(j["columnStart"])
        self.dense_column = np.repeat(np.arange(self.states), np.diff(self.column))
        self.v = np.empty(self.states + self.derived * self.vessel_count)
        self.hydrogen = np.full(self.vessel_count, 1e-4)

    def settle(self, regime):
        """Sets what holds during a segment."""
        self.volume0 = regime[self.volume_at : self.volume_at + self.vessel_count]
        self.slope = regime[self.slope_at : self.slope_at + self.vessel_count]
        count = len(CONSTANTS)
        constants = regime[self.constants_at : self.constants_at + count * self.vessel_count].reshape(-1, count).T
        self.k = SimpleNamespace(**dict(zip(CONSTANTS, constants)))
        self.flow = regime[self.inside_flow]
        self.brought = (regime[self.outside_flow][:, None] * regime[self.outside_source]).ravel()
        self.given = [regime[group.coefficients] for group in self.groups]

    def forget(self):
        self.hydrogen = np.full(self.vessel_count, 1e-4)

    def look(self, since, y):
        v, states, vessel_count = self.v, self.states, self.vessel_count
        self.volume = self.volume0 + self.slope * since
        self.per_volume = 1 / self.volume
        concentrations = y[: self.water].reshape(vessel_count, self.each) * self.per_volume[:, None]
        v[: self.water] = concentrations.ravel()
        v[self.water : states] = y[self.water :]
        self.concentrations = concentrations
        tan, alkalinity, carbon = (concentrations[:, c] for c in self.dissolved)
        h = hydrogen_ion(alkalinity, carbon, tan / self.molar, self.k, self.hydrogen)
        self.hydrogen = h
        self.chemistry = [None] * self.speciation
        written.speciate(tan, carbon, h, self.k, self.molar, self.chemistry, 0)
        v[states:] = np.stack(self.chemistry[: self.derived], axis=1).ravel()

    def derivative(self, since, y):
        self.look(since, y)
        v = self.v
        r = [(self.flow[:, None] * self.concentrations[self.inside_from]).ravel(), self.brought]
        for group, k in zip(self.groups, self.given):
            rate = group.rate(v, group.at, k)
            r.append(rate * self.volume[group.vessel] if group.volumetric else rate)
        return self.moves @ np.concatenate(r)

    def entries(self, since, y):
        """Entries of the Jacobian, column by column."""
        self.look(since, y)
        v = self.v
        parts = [np.repeat(self.flow * self.per_volume[self.inside_from], self.each)]
        for group, k in zip(self.groups, self.given):
            d = [0.0] * len(group.kind)
            group.partials(v, group.at, k, d)
            vessel = group.vessel
            for m, kind in enumerate(group.kind):
                partial = np.broadcast_to(d[m], vessel.shape)
                scaled = partial if group.volumetric else partial * self.per_volume[vessel]
                if kind == 0:
                    parts.append(scaled)
                elif kind == 1:
                    parts.append(partial * self.volume[vessel] if group.volumetric else partial)
                else:
                    first = self.derived + 3 * (kind - 2)
                    parts.extend([scaled * self.chemistry[first + c][vessel] for c in range(3)])
        return self.places @ np.concatenate(parts)

    def sparse_jacobian(self, since, y):
        return csc_matrix((self.entries(since, y), self.row, self.column), (self.states, self.states))

    def dense_jacobian(self, since, y):
        full = np.zeros((self.states, self.states))
        full[self.row, self.dense_column] = self.entries(since, y)
        return full
