"""A water loop that answers readings: square-law pipes and coils, valves, limiters and one pump, solved exactly.

For the making of the sample jobs only; the program has a solver of its own, and shares no line with this one.
Flows are m3/h and pressure differences bar throughout, so that a valve's resistance is SG / Kv^2.
"""
import math

GRAVITY = 9.80665
REFERENCE_DENSITY = 999.0  # kg/m3; Kv and Cv hold for water of specific gravity 1 at 60 F
FULLY_OPEN = 4.0  # turns
KV_OPEN = {"DN15": 2.7, "DN20": 5.3, "DN25": 9.2, "DN32": 15.1, "DN40": 22.5, "DN50": 36.0, "DN65": 62.0,
           "DN80": 98.0}


def shape_screwed(turns):
    """Share of the open coefficient of a screwed valve: modified linear, flat towards fully open."""
    return math.sin(0.5 * math.pi * turns / FULLY_OPEN) ** 1.7


def shape_flanged(turns):
    """Share of the open coefficient of a flanged valve: equal percentage, rangeability 16."""
    return 16.0 ** (turns / FULLY_OPEN - 1)


class Noise:
    """Normally distributed numbers from a seed: sums of uniform ones, so equal on every machine."""

    def __init__(self, random):
        self._random = random

    def normal(self, spread):
        return spread * (sum(self._random.random() for _ in range(12)) - 6)


class Branch:
    """One branch of the tree with what was designed and what is hidden from the technician."""

    def __init__(self, tag, serves, design, run_loss, circuit_loss, size, parent="", kind="manual", model="BV-A"):
        self.tag, self.serves, self.parent, self.kind = tag, serves, parent, kind
        self.design = design  # m3/h; filled in from the branches below where it is None
        self.run_loss, self.circuit_loss = run_loss, circuit_loss  # bar at design flow; the design's numbers
        self.model, self.size = model, size
        self.setting = FULLY_OPEN
        self.children = []
        self.limits = None  # bar: the range in which a limiter holds its design flow
        self.run_factor = self.circuit_factor = self.valve_factor = 1.0  # truth over design

    def table_coefficient(self, setting):
        """Kv by the valve's table."""
        shape = shape_flanged if self.model == "BV-F" else shape_screwed
        return KV_OPEN[self.size] * shape(setting)


class Loop:
    """Branches in order along their parents, nearest first; a branch without a parent is fed at the pump."""

    def __init__(self, branches, density, pump_head):
        self.branches = branches
        self.gravity_ratio = density / REFERENCE_DENSITY
        self.bar_per_m = density * GRAVITY / 1e5
        self.pump_head = pump_head  # m over m3/h at rated speed
        self.speed = 1.0
        self.by_tag = {branch.tag: branch for branch in branches}
        self.roots = [branch for branch in branches if not branch.parent]
        for branch in branches:
            if branch.parent:
                self.by_tag[branch.parent].children.append(branch)
        for branch in reversed(branches):
            if branch.design is None:
                branch.design = sum(child.design for child in branch.children)
        self.terminals = [branch for branch in branches if not branch.children]
        self._list_elements()

    def _list_elements(self):
        """Every resistance with the terminals that flow through it: (terminal numbers, branch, what)."""
        number = {id(terminal): i for i, terminal in enumerate(self.terminals)}

        def below(branch):
            return [number[id(branch)]] if not branch.children else sum((below(c) for c in branch.children), [])

        self._elements = []
        self._below = {branch.tag: below(branch) for branch in self.branches}
        for siblings in [self.roots] + [branch.children for branch in self.branches]:
            for i, branch in enumerate(siblings):
                beyond = sum((self._below[b.tag] for b in siblings[i:]), [])
                design = sum(b.design for b in siblings[i:])
                self._elements.append((beyond, branch, "run", design))
                self._elements.append((self._below[branch.tag], branch, "own", branch.design))

    def _resistance(self, branch, what, design):
        if what == "run":
            return branch.run_loss * branch.run_factor / design ** 2
        own = branch.circuit_loss * branch.circuit_factor / design ** 2
        if branch.kind != "manual":
            return own
        return own + self.gravity_ratio / (branch.table_coefficient(branch.setting) * branch.valve_factor) ** 2

    def head_bar(self, flow):
        return self.speed ** 2 * self.pump_head(flow / self.speed) * self.bar_per_m

    def solve(self):
        """Flows of all terminals by Newton's method; limiters are free, holding or at an end of their range."""
        resistances = [(below, self._resistance(*rest)) for below, *rest in self._elements]
        flows = [terminal.design for terminal in self.terminals]
        limiter_ends = {i: None for i, t in enumerate(self.terminals) if t.kind == "limiter"}
        for _ in range(10):
            fixed = {i for i, end in limiter_ends.items() if end is None}
            extra = [(i, end / self.terminals[i].design ** 2) for i, end in limiter_ends.items() if end is not None]
            flows = self._newton(resistances + [([i], k) for i, k in extra], fixed, flows)
            rest = self._residuals(resistances, flows)
            changed = False
            for i in list(limiter_ends):
                low, high = self.terminals[i].limits
                end = low if rest[i] < low else high if rest[i] > high else None
                changed = changed or end != limiter_ends[i]
                limiter_ends[i] = end
            if not changed:
                break
        self.flows = {t.tag: q for t, q in zip(self.terminals, flows)}
        for branch in self.branches:
            self.flows[branch.tag] = sum(flows[i] for i in self._below[branch.tag])
        self.limiter_dp = {self.terminals[i].tag: self._residuals(resistances, flows)[i] for i in limiter_ends}
        self.total = sum(flows)
        return self.flows

    def _residuals(self, resistances, flows):
        """Head left over at each terminal, bar."""
        head = self.head_bar(sum(flows))
        rest = [head] * len(flows)
        for below, resistance in resistances:
            flow = sum(flows[i] for i in below)
            for i in below:
                rest[i] -= resistance * flow * abs(flow)
        return rest

    def _newton(self, resistances, fixed, flows):
        count = len(flows)
        flows = list(flows)
        for i in fixed:
            flows[i] = self.terminals[i].design
        for _ in range(60):
            rest = self._residuals(resistances, flows)
            total = sum(flows)
            slope = (self.head_bar(total * 1.0001) - self.head_bar(total * 0.9999)) / (0.0002 * total)
            matrix = [[-slope] * count for _ in range(count)]
            for below, resistance in resistances:
                steep = 2 * resistance * abs(sum(flows[i] for i in below))
                for i in below:
                    row = matrix[i]
                    for j in below:
                        row[j] += steep
            for i in fixed:
                matrix[i] = [0.0] * count
                matrix[i][i] = 1.0
                rest[i] = 0.0
            steps = eliminate(matrix, rest)
            flows = [max(q + step, 0.2 * q) for q, step in zip(flows, steps)]
            if max(abs(step) for step in steps) < 1e-12 * total:
                return flows
        raise RuntimeError("the loop does not settle")

    def valve_dp(self, branch):
        """True dp across a branch's valve or limiter, bar."""
        if branch.kind == "limiter":
            return self.limiter_dp[branch.tag]
        coefficient = branch.table_coefficient(branch.setting) * branch.valve_factor
        return self.gravity_ratio * (self.flows[branch.tag] / coefficient) ** 2


def eliminate(matrix, right):
    """Solves a small dense system by Gaussian elimination; the matrices here are dominated by their diagonal."""
    count = len(right)
    for k in range(count):
        pivot = max(range(k, count), key=lambda r: abs(matrix[r][k]))
        matrix[k], matrix[pivot] = matrix[pivot], matrix[k]
        right[k], right[pivot] = right[pivot], right[k]
        for r in range(k + 1, count):
            factor = matrix[r][k] / matrix[k][k]
            if factor:
                row, top = matrix[r], matrix[k]
                for c in range(k, count):
                    row[c] -= factor * top[c]
                right[r] -= factor * right[k]
    out = [0.0] * count
    for k in reversed(range(count)):
        out[k] = (right[k] - sum(matrix[k][c] * out[c] for c in range(k + 1, count))) / matrix[k][k]
    return out
