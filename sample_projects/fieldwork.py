"""Meters, a pump's data sheet and a technician who walks a loop: what is read, turned and written down.

For the making of the sample jobs only. The technician knows nothing but readings and tables.
"""
import datetime
import math

from loop_model import FULLY_OPEN

# Spreads around what certificates say (standard deviations).
METER_GAIN_SPREAD, METER_SPREAD = 0.003, 0.003


class Meter:
    """A dp meter: a gain error that stays, a random part, a floor, and a last digit."""

    def __init__(self, tag, kind, serial, full_scale, floor, digits, calibrated, due, noise):
        self.tag, self.kind, self.serial = tag, kind, serial
        self.full_scale, self.floor, self.digits = full_scale, floor, digits
        self.calibrated, self.due = calibrated, due
        self._gain = 1 + noise.normal(METER_GAIN_SPREAD)
        self._noise = noise

    def show(self, true_value):
        """The text on the display for a true value in the meter's unit."""
        read = true_value * self._gain * (1 + self._noise.normal(METER_SPREAD)) + self._noise.normal(0.4 * self.floor)
        return f"{max(read, 0.0):.{self.digits}f}"

    def row(self):
        return [self.tag, self.kind, self.serial, f"{self.full_scale:g}", "1", f"{self.floor:g}", self.calibrated,
                self.due]


class Pump:
    """A pump's table from smooth formulas (flow and head in the job's units) and what its motor takes."""

    def __init__(self, tag, shutoff, droop, best_flow, best_efficiency, flows, rpm):
        self.tag, self.shutoff, self.droop = tag, shutoff, droop
        self.best_flow, self.best_efficiency = best_flow, best_efficiency
        self.flows, self.rpm = flows, rpm

    def head(self, flow):
        return self.shutoff - self.droop * flow ** 2 * (1 + 0.15 * flow / self.best_flow)

    def efficiency(self, flow):
        x = flow / self.best_flow
        return self.best_efficiency * (1 - 0.85 * abs(1 - x) ** 1.9)

    def rows(self, npsh_start, npsh_rise):
        for flow in self.flows:
            efficiency = "" if flow == 0 else f"{100 * self.efficiency(flow):.1f}"
            npsh = "" if flow == 0 else f"{npsh_start + npsh_rise * (flow / self.best_flow) ** 2:.1f}"
            yield [self.tag, f"{flow:g}", f"{self.head(flow):.1f}", efficiency, npsh]


class Walk:
    """A technician on the loop: turns valves, reads meters, writes rows. Knows only what was read."""

    def __init__(self, loop, dp_unit, meters, noise):
        self.loop, self.dp_unit, self.meters, self.noise = loop, dp_unit, meters, noise
        self.rows, self.truth = [], []
        self.round, self.kind, self.person = 0, "", ""

    def start(self, number, kind, time, person):
        self.round, self.kind, self.person = number, kind, person
        self.clock = datetime.datetime.fromisoformat(time)
        self.loop.solve()

    def tick(self, minutes):
        self.clock += datetime.timedelta(minutes=minutes)
        return self.clock.isoformat(timespec="minutes")

    def _meter(self, dp):
        fitting = [meter for meter in self.meters if dp <= 0.9 * meter.full_scale]
        return fitting[0] if fitting else self.meters[-1]

    def read(self, branch):
        """Display text and meter of a reading at a branch now."""
        dp = self.loop.valve_dp(branch) / self.dp_unit
        meter = self._meter(dp)
        return meter.show(dp), meter

    def of_design(self, branch, text):
        dp = float(text) * self.dp_unit
        flow = branch.table_coefficient(branch.setting) * math.sqrt(dp / self.loop.gravity_ratio)
        return flow / branch.design

    def write(self, branch, text, meter, note="", minutes=3):
        setting = "" if branch.kind == "limiter" else f"{branch.setting:.1f}"
        self.rows.append([self.round, self.kind, self.tick(minutes), branch.tag, setting, text, meter.tag,
                          self.person, note])

    def turn(self, branch, setting):
        branch.setting = setting
        self.loop.solve()

    def match(self, branch, reference, note=""):
        """Turns a branch's valve until its share of design reads as the reference's at the same moment."""
        def miss(tenths):
            self.turn(branch, tenths / 10)
            return (self.of_design(branch, self.read(branch)[0]) -
                    self.of_design(reference, self.read(reference)[0]))

        low, high = 5, round(10 * FULLY_OPEN)
        high_miss = miss(high)
        if high_miss <= 0:
            self.write(branch, *self.read(branch), note=note, minutes=4)
            return
        low_miss = miss(low)
        while high - low > 1:
            middle = (low + high) // 2
            value = miss(middle)
            if value > 0:
                high, high_miss = middle, value
            else:
                low, low_miss = middle, value
        self.turn(branch, (high if high_miss < -low_miss else low) / 10)
        self.write(branch, *self.read(branch), note=note, minutes=6)

    def walk(self, notes=None):
        """Reads every valve once, in walking order, nothing moved."""
        for branch in self.loop.branches:
            if branch.kind in ("manual", "limiter"):
                self.write(branch, *self.read(branch), note=(notes or {}).get(branch.tag, ""))
        for branch in self.loop.branches:
            self.truth.append([self.round, branch.tag, f"{self.loop.flows[branch.tag]:.5f}",
                               f"{self.loop.flows[branch.tag] / branch.design:.4f}"])


def pump_row(walk, pump, gauge_digits, gauge_unit, static, volts, motor_efficiency, power_factor):
    """Gauges, speed and motor of the pump now."""
    loop, noise = walk.loop, walk.noise
    rise = loop.head_bar(loop.total) / gauge_unit
    flow = loop.total / loop.speed
    head_m = loop.head_bar(loop.total) / loop.bar_per_m
    efficiency = pump.efficiency(flow / pump.flow_unit)
    shaft_kw = loop.bar_per_m * head_m * 1e5 * loop.total / 3600 / 1000 / efficiency
    power = shaft_kw / motor_efficiency * (1 + noise.normal(0.005))
    read_volts = volts * (1 + noise.normal(0.004))
    amps = 1000 * power / (math.sqrt(3) * read_volts * power_factor)
    suction = static * (1 + noise.normal(0.004))
    return [walk.round, walk.tick(5), pump.tag, f"{suction:.{gauge_digits}f}",
            f"{suction + rise * (1 + noise.normal(0.004)):.{gauge_digits}f}", f"{pump.rpm * loop.speed:.0f}",
            f"{read_volts:.0f}", f"{amps:.2f}", f"{power:.2f}", "PG-1", walk.person]
