"""Meters, a pump's data sheet and a technician who walks a loop: what is read, turned and written down.

For the making of the sample jobs only. The technician knows nothing but readings and tables.
"""
import datetime
import math

from loop_model import FULLY_OPEN, GRAVITY

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

    def rows(self, npsh_start, npsh_rise, impellers):
        """The maker's curves, one an impeller, the full one first: a trim takes a little more than its square."""
        for impeller in impellers:
            ratio = impeller / impellers[0]
            for full in self.flows:
                flow = full * ratio ** 1.1
                efficiency = "" if full == 0 else f"{100 * self.efficiency(full) * ratio ** 0.2:.1f}"
                npsh = "" if full == 0 else f"{npsh_start + npsh_rise * (flow / self.best_flow) ** 2:.1f}"
                yield [self.tag, f"{flow:.3g}", f"{self.head(full) * ratio ** 2.2:.1f}", efficiency, npsh,
                       f"{impeller:g}"]


class Walk:
    """A technician on the loop: turns valves, reads meters, writes rows. Knows only what was read."""

    def __init__(self, loop, dp_unit, meters, noise):
        self.loop, self.dp_unit, self.meters, self.noise = loop, dp_unit, meters, noise
        self.rows, self.truth, self.reasons = [], [], {}
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


class Taps:
    """Where the gauges of a pump sit: heights and pipe diameters at suction and discharge, m."""

    def __init__(self, suction_height, discharge_height, suction_diameter, discharge_diameter):
        self.rise = discharge_height - suction_height
        self.areas = [math.pi * d ** 2 / 4 for d in (suction_diameter, discharge_diameter)]

    def gauge_rise_bar(self, loop, flow, head_bar):
        """What two exact gauges differ by where the pump makes head_bar at flow (m3/h)."""
        suction, discharge = [flow / 3600 / area for area in self.areas]
        velocity = 1000 * loop.bar_per_m / GRAVITY * (discharge ** 2 - suction ** 2) / 2 / 1000
        return head_bar - self.rise * loop.bar_per_m - velocity


PUMP_COLUMNS = ["round", "time", "pump", "suction[{0}]", "discharge[{0}]", "speed[rpm]", "volts[V]", "volts_second[V]",
                "volts_third[V]", "amps[A]", "amps_second[A]", "amps_third[A]", "power[kW]", "instrument", "person",
                "point", "note"]


class PumpTest:
    """What the gauges and the clamp meter of one pump show; what is added to a walk draws noise of its own."""

    def __init__(self, walk, pump, taps, digits, unit, static, volts, motor_efficiency, power_factor, noise):
        self.walk, self.pump, self.taps, self.digits, self.unit = walk, pump, taps, digits, unit
        self.static, self.volts, self.noise = static, volts, noise
        self.motor_efficiency, self.power_factor = motor_efficiency, power_factor
        self.rows = []

    def _text(self, value):
        return f"{value:.{self.digits}f}"

    def at_rest(self, time):
        """Pump off: the gauges show the fill pressure at their heights."""
        suction = self.static * (1 + self.noise.normal(0.002))
        discharge = suction + self.taps.gauge_rise_bar(self.walk.loop, 0, 0) / self.unit
        self.rows.append([self.walk.round, time, self.pump.tag, self._text(suction), self._text(discharge), "0"] +
                         [""] * 7 + ["PG-1", self.walk.person, "static", "pump off, valves open"])

    def shutoff(self, time, note):
        """Discharge valve shut for a moment."""
        loop = self.walk.loop
        suction = self.static * (1 + self.noise.normal(0.002))
        head = loop.pump_head(0) * loop.bar_per_m * (1 + self.noise.normal(0.002))
        discharge = suction + self.taps.gauge_rise_bar(loop, 0, head) / self.unit
        self.rows.append([self.walk.round, time, self.pump.tag, self._text(suction), self._text(discharge),
                          f"{self.pump.rpm:.0f}"] + [""] * 7 + ["PG-1", self.walk.person, "shutoff", note])

    def running(self, point="", note=""):
        """Gauges, speed and motor of the pump now."""
        loop, noise = self.walk.loop, self.walk.noise
        head_bar = loop.head_bar(loop.total)
        efficiency = self.pump.efficiency(loop.total / loop.speed / self.pump.flow_unit)
        shaft_kw = head_bar * 1e5 * loop.total / 3600 / 1000 / efficiency
        power = shaft_kw / self.motor_efficiency * (1 + noise.normal(0.005))
        read_volts = self.volts * (1 + noise.normal(0.004))
        amps = 1000 * power / (math.sqrt(3) * read_volts * self.power_factor)
        suction = self.static * (1 + noise.normal(0.004))
        rise = self.taps.gauge_rise_bar(loop, loop.total, head_bar) / self.unit * (1 + noise.normal(0.004))
        volts = [read_volts] + [read_volts * (1 + self.noise.normal(0.003)) for _ in range(2)]
        amperes = [amps] + [amps * (1 + self.noise.normal(0.012)) for _ in range(2)]
        self.rows.append([self.walk.round, self.walk.tick(5), self.pump.tag, self._text(suction),
                          self._text(suction + rise), f"{self.pump.rpm * loop.speed:.0f}"] +
                         [f"{volt:.0f}" for volt in volts] + [f"{ampere:.2f}" for ampere in amperes] +
                         [f"{power:.2f}", "PG-1", self.walk.person, point, note])
