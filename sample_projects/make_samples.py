"""Makes the two sample jobs: states a hidden loop, lets a technician walk it, and writes what was read as CSV tables.

Usage: make_samples.py [FOLDER]    (without FOLDER the samples are written beside this file)
Same bytes on every run: all noise comes from fixed seeds.
"""
import csv
import math
import pathlib
import random
import sys

sys.dont_write_bytecode = True  # the folder keeps only what is committed

from fieldwork import PUMP_COLUMNS, Meter, Pump, PumpTest, Taps, Walk
from loop_model import GRAVITY, KV_OPEN, Branch, Loop, Noise, shape_flanged, shape_screwed

# Units: value in the unit times the factor is m3/h, bar or Kv.
GPM = 231 * 0.0254 ** 3 * 60
LITRE_PER_SECOND = 3.6
PSI = 0.45359237 * GRAVITY / 0.0254 ** 2 / 1e5
KPA = 0.01
FOOT_M = 0.3048
INCH_M = 0.0254
CV = GPM / math.sqrt(PSI)
# Densities, kg/m3: IAPWS-IF97 at 0.3 MPa; Melinder (2010), 30 % propylene glycol by mass.
WATER_170F = 973.941
GLYCOL_30_7C = 1029.173

# Spreads of the hidden truth around what the drawings, tables and certificates say (standard deviations).
RUN_SPREAD, CIRCUIT_SPREAD, VALVE_SPREAD = 0.06, 0.05, 0.012


def hide(loop, noise):
    """Draws the truth behind the drawings."""
    for branch in loop.branches:
        branch.run_factor = max(0.8, 1 + noise.normal(RUN_SPREAD))
        branch.circuit_factor = max(0.8, 1 + noise.normal(CIRCUIT_SPREAD))
        branch.valve_factor = 1 + noise.normal(VALVE_SPREAD)


def smallest_readable(design, dp_least, gravity_ratio):
    """The largest valve whose dp is at least dp_least (bar), fully open at design flow."""
    fitting = [size for size, kv in KV_OPEN.items() if gravity_ratio * (design / kv) ** 2 >= dp_least]
    return fitting[-1]


def table_rows(model, size, label, unit, minimum, accuracy):
    """A valve's table in half turns; three significant digits as a data sheet prints them."""
    shape = shape_flanged if model == "BV-F" else shape_screwed
    for half_turns in range(1, 9):
        setting = half_turns / 2
        value = KV_OPEN[size] * shape(setting) / unit
        digits = max(0, 2 - math.floor(math.log10(value)))
        first = half_turns == 1
        yield [model, label, "turns", f"{setting:.1f}", f"{value:.{digits}f}", minimum if first else "", "",
               accuracy if first else ""]


def write_table(folder, name, header, rows):
    with open(folder / name, "w", newline="", encoding="utf-8") as file:
        writer = csv.writer(file, lineterminator="\n")
        writer.writerow(header)
        writer.writerows(rows)


def write_job(folder, job, valves, branches, pumps, curve, instruments, walk, pump_readings, load, set_points=None,
              people=None):
    """All tables of a job. Each of job, valves, ... is (header, rows), job its rows."""
    folder.mkdir(parents=True, exist_ok=True)
    write_table(folder, "job.csv", ["key", "value"], job)
    write_table(folder, "valves.csv", *valves)
    write_table(folder, "branches.csv", *branches)
    write_table(folder, "pumps.csv", *pumps)
    write_table(folder, "pump_curve.csv", *curve)
    write_table(folder, "instruments.csv", *instruments)
    unit = "psi" if walk.dp_unit == PSI else "kPa"
    header = ["round", "kind", "time", "tag", "setting", f"dp[{unit}]", "instrument", "person", "note"]
    if walk.reasons:
        header.append("reason")
    write_table(folder, "readings.csv", header,
                [row + [walk.reasons.get((row[0], row[3]), "")] if walk.reasons else row for row in walk.rows])
    write_table(folder, "pump_readings.csv", [column.format(unit) for column in PUMP_COLUMNS], pump_readings)
    write_table(folder, "load.csv", ["hours", "flow[%]"], load)
    if set_points:
        write_table(folder, "set_points.csv", *set_points)
    if people:
        write_table(folder, "people.csv", ["name", "role"], people)
    write_table(folder.parent, folder.name + "_truth.csv", ["round", "tag", "flow[m3/h]", "of_design"], walk.truth)


SIZE_LABELS = {"DN15": "1/2 in", "DN20": "3/4 in", "DN25": "1 in", "DN32": "1 1/4 in", "DN40": "1 1/2 in",
               "DN50": "2 in"}


def library_heating(folder):
    """Seven circuits on one main; the fifth is the index. Four rounds, the last one accepted."""
    bar_per_foot = WATER_170F * GRAVITY * FOOT_M / 1e5
    # tag, serves, design gpm, run loss ft, circuit loss ft, valve
    schedule = [("C1", "Reading room north", 12.0, 6.0, 11.5, "DN25"), ("C2", "Children's room", 9.0, 1.6, 9.0, "DN20"),
                ("C3", "Lobby air handler", 16.0, 1.4, 14.0, "DN32"), ("C4", "Stacks east", 7.5, 1.8, 8.0, "DN20"),
                ("C5", "Archive air handler", 14.0, 1.3, 20.0, "DN32"), ("C6", "Stacks west", 10.0, 1.5, 10.0, "DN25"),
                ("C7", "Staff rooms", 6.5, 1.2, 8.5, "DN20")]
    # Straight pipe before and behind each valve in diameters, height over the pump in ft.
    places = [(8, 3, 4), (6, 2, 4), (10, 4, 4), (5, 2, 16), (12, 4, 28), (4, 2, 16), (6, 3, 16)]
    branches = [Branch(tag, serves, flow * GPM, run * bar_per_foot, own * bar_per_foot,
                       size)
                for tag, serves, flow, run, own, size in schedule]
    pump = Pump("P-1", 62.0, 0.00165, 88.0, 0.66, [0, 20, 40, 60, 75, 90, 105, 120], 1750)
    pump.flow_unit = GPM
    loop = Loop(branches, WATER_170F, lambda flow: pump.head(flow / GPM) * FOOT_M * 0.985)
    noise = Noise(random.Random(20260302))
    hide(loop, noise)
    meters = [Meter("DPM-1", "dp meter, low range", "L-20417", 3, 0.005, 2, "2025-09-15", "2026-09-15", noise),
              Meter("DPM-2", "dp meter, high range", "H-11862", 15, 0.015, 2, "2025-09-15", "2026-09-15", noise)]
    walk = Walk(loop, PSI, meters, noise)
    taps = Taps(1.0 * FOOT_M, 2.5 * FOOT_M, 3.068 * INCH_M, 2.469 * INCH_M)
    test = PumpTest(walk, pump, taps, 1, PSI, 14.2, 460, 0.84 * 0.97, 0.78, Noise(random.Random(20260303)))
    by_tag = loop.by_tag
    walk.start(1, "survey", "2026-03-02T08:30", "Maren Dahlke")
    test.at_rest("2026-03-02T08:26")
    test.shutoff("2026-03-02T08:29", "boiler off and cooled; valve shut for 20 s")
    test.running("full open")
    walk.walk({"C1": "all seven valves at the stop; control valves held open",
               "C5": "lowest share of all, although it is not the last"})
    walk.start(2, "adjusting", "2026-03-02T13:00", "Maren Dahlke")
    for tag in ["C6", "C4", "C3", "C2", "C1"]:
        walk.match(by_tag[tag], by_tag["C7"], "matched to C7, the last circuit")
    test.running()
    walk.walk({"C5": "short with its valve at the stop: C5 is the index, not C7"})
    walk.start(3, "adjusting", "2026-03-03T08:15", "Teo Brandvold")
    for tag in ["C7", "C6", "C4", "C3"]:
        walk.match(by_tag[tag], by_tag["C5"], "matched to C5")
    test.running()
    walk.walk({"C1": "not yet matched to C5", "C2": "not yet matched to C5"})
    walk.start(4, "final", "2026-03-04T08:00", "Maren Dahlke")
    for tag in ["C7", "C6", "C4", "C3", "C2", "C1"]:
        walk.match(by_tag[tag], by_tag["C5"], "matched to C5")
    read = sum(walk.of_design(b, walk.read(b)[0]) * b.design for b in branches)
    loop.speed = round(pump.rpm * sum(b.design for b in branches) / read, -1) / pump.rpm
    loop.solve()
    test.running("final")
    walk.walk({"C5": "valve at the stop"})

    c5 = by_tag["C5"]
    circuit = (c5.circuit_loss * c5.circuit_factor * (loop.flows["C5"] / c5.design) ** 2 + loop.valve_dp(c5)) / PSI
    sizes = sorted({b.size for b in branches}, key=list(KV_OPEN).index)
    write_job(
        folder,
        [["name", "Library heating"], ["site", "Fernhollow, Mill Lane 4"], ["client", "Fernhollow Library Trust"],
         ["units", "US"], ["fluid", "water"], ["temperature[F]", "170"], ["tolerance_low[%]", "-10"],
         ["tolerance_high[%]", "10"], ["matching_band[%]", "5"], ["power_price[1/kWh]", "0.14"], ["currency", "USD"],
         ["hours[h/yr]", "4200"], ["altitude[ft]", "640"], ["fill_pressure[psi]", "13.8"],
         ["code_form", "percent or floor"], ["code_edition", "Fernhollow County energy code, 2024"],
         ["code_clause", "6.4, hydronic balancing"]],
        (["model", "size", "scale", "setting", "Cv", "minimum_dp[psi]", "maximum_dp[psi]", "accuracy[%]"],
         [row for size in sizes for row in table_rows("BV-A", size, SIZE_LABELS[size], CV, "0.15", "4")]),
        (["tag", "parent", "serves", "kind", "design_flow[gpm]", "run_loss[ft]", "circuit_loss[ft]", "valve_model",
          "valve_size", "setting", "side", "upstream_diameters", "downstream_diameters", "elevation[ft]", "policy"],
         [[tag, "", serves, "manual", f"{flow:g}", f"{run:.1f}", f"{own:.1f}", "BV-A", SIZE_LABELS[size], "4.0",
           "return", up, down, height, "proportional"]
          for (tag, serves, flow, run, own, size), (up, down, height) in zip(schedule, places)]),
        (["tag", "running", "speed[rpm]", "impeller[in]", "impeller_min[in]", "motor_power[hp]", "motor_efficiency[%]",
          "volts[V]", "amps[A]", "service_factor", "suction_diameter[in]", "discharge_diameter[in]",
          "suction_gauge_height[ft]", "discharge_gauge_height[ft]", "power_factor[%]", "no_load_amps[A]",
          "minimum_speed[%]", "drive"],
         [["P-1", "yes", "1750", "6.5", "5.25", "3", "84", "460", "4.3", "1.15", "3.068", "2.469", "1.0", "2.5", "78",
           "1.3", "35", "yes"]]),
        (["pump", "flow[gpm]", "head[ft]", "efficiency[%]", "npshr[ft]", "impeller[in]"],
         pump.rows(3.2, 2.6, [6.5, 6.0, 5.5])),
        (["tag", "kind", "serial", "range[psi]", "accuracy[%]", "accuracy_floor[psi]", "calibrated", "due"],
         [meter.row() for meter in meters] +
         [["PG-1", "pressure gauge, digital", "G-30955", "60", "0.5", "0.05", "2025-11-03", "2026-11-03"]]),
        walk, test.rows, [["500", "100"], ["1300", "75"], ["1500", "50"], ["900", "30"]],
        (["pump", "sensor", "location", "method", "zero[psi]", "dp[psi]", "flow[gpm]", "speed[rpm]", "margin[psi]",
          "low_limit[psi]", "high_limit[psi]", "reset", "set_by", "time", "note"],
         [["P-1", "DPS-1", "across circuit C5", "index at design", "0.02", f"{circuit:.1f}", f"{loop.total / GPM:.1f}",
           f"{pump.rpm * loop.speed:.0f}", "0.5", "4", "12", "none", "Maren Dahlke", "2026-03-04T11:20", ""]]))
    return loop, walk


def clinic_cooling(folder):
    """Three risers, 26 terminals, glycol. Three rounds, not finished."""
    gravity_ratio = GLYCOL_30_7C / 999.0
    # tag, parent, serves, design L/s, run loss kPa, circuit loss kPa; 0 L/s: the sum of what it feeds
    schedule = [
        ("RA", "", "North riser", 0, 42.0, 3.0), ("RB", "", "Core riser", 0, 7.5, 2.5),
        ("RC", "", "South riser", 0, 9.0, 3.5),
        ("A1", "RA", "Ward 1 fan coils", 0.42, 2.4, 24.0), ("A2", "RA", "Ward 1 corridor", 0.18, 1.8, 19.0),
        ("A3", "RA", "Ward 2 fan coils", 0.39, 2.2, 25.5), ("A4", "RA", "Nurses' station", 0.15, 1.7, 18.0),
        ("A5", "RA", "Treatment air handler", 0.62, 2.6, 48.0), ("A6", "RA", "Ward 3 fan coils", 0.36, 1.9, 23.0),
        ("A7", "RA", "Linen room", 0.15, 1.6, 46.0), ("A8", "RA", "Ward 4 fan coils", 0.33, 2.1, 24.5),
        ("A9", "RA", "Family room", 0.20, 1.5, 20.0),
        ("B1", "RB", "Entrance hall", 0.55, 2.8, 26.0), ("B2", "RB", "Admissions", 0.28, 2.0, 21.0),
        ("B3", "RB", "Pharmacy", 0.24, 1.9, 22.0), ("B4", "RB", "Imaging air handler", 0.78, 2.7, 30.0),
        ("B5", "RB", "Server room", 0.35, 1.6, 15.0), ("B6", "RB", "Waiting area", 0.31, 1.8, 20.5),
        ("B7", "RB", "Offices", 0.26, 1.7, 19.5), ("B8", "RB", "Laboratory air handler", 0.58, 2.3, 33.0),
        ("C1", "RC", "Theatre 1 air handler", 0.84, 3.1, 29.0), ("C2", "RC", "Theatre 2 air handler", 0.76, 2.9, 31.0),
        ("C3", "RC", "Recovery", 0.44, 2.3, 24.0), ("CX", "RC", "Annex branch", 0, 3.4, 2.0),
        ("C4", "RC", "Sterile store", 0.22, 1.9, 20.0),
        ("X1", "CX", "Annex exam 1", 0.17, 1.7, 17.5), ("X2", "CX", "Annex exam 2", 0.19, 1.6, 18.5),
        ("X3", "CX", "Annex physiotherapy", 0.41, 1.9, 26.0), ("X4", "CX", "Annex archive", 0.14, 1.5, 16.0),
        ("X5", "CX", "Annex lounge", 0.27, 1.8, 19.0)]
    branches = []
    for tag, parent, serves, flow, run, own in schedule:
        flow_m3h = flow * LITRE_PER_SECOND if flow else None
        branches.append(Branch(tag, serves, flow_m3h, run * KPA, own * KPA, None, parent,
                               "limiter" if tag == "B5" else "manual",
                               "FL-A" if tag == "B5" else "BV-A" if flow else "BV-F"))
    pump = Pump("P-21", 18.4, 0.0042, 38.0, 0.71, [0, 8, 16, 24, 32, 40, 48], 1450)
    pump.flow_unit = 1.0
    loop = Loop(branches, GLYCOL_30_7C, lambda flow: pump.head(flow) * 0.99)
    by_tag = loop.by_tag
    for branch in branches:
        branch.size = smallest_readable(branch.design, 3.4 * KPA, gravity_ratio)
    by_tag["A7"].size = "DN20"
    by_tag["B5"].size = "DN20"
    by_tag["B5"].limits = (15 * KPA, 160 * KPA)
    noise = Noise(random.Random(20260511))
    hide(loop, noise)
    meters = [Meter("DPM-3", "dp meter, low range", "L-20588", 20, 0.05, 2, "2026-01-20", "2027-01-20", noise),
              Meter("DPM-4", "dp meter, high range", "H-11907", 150, 0.1, 1, "2026-01-20", "2027-01-20", noise)]
    walk = Walk(loop, KPA, meters, noise)
    taps = Taps(0.6, 1.1, 0.0825, 0.0703)
    test = PumpTest(walk, pump, taps, 0, KPA, 148, 400, 0.86, 0.81, Noise(random.Random(20260512)))
    walk.start(1, "survey", "2026-05-11T08:20", "Ines Kallweit")
    test.at_rest("2026-05-11T08:16")
    test.running("full open", "no shutoff test: the only pump of the chiller")
    walk.walk({"RA": "all valves at the stop; terminals driven to full cooling",
               "B5": "automatic limiter: dp read for its working range"})
    # Rounds are closed with a reason for each reading that is in doubt; round 3 is open and waits for it.
    walk.reasons = {(1, "A7"): "valve too large for this coil, dp hardly moves the meter",
                    (2, "A7"): "valve too large, as in round 1"}
    walk.start(2, "adjusting", "2026-05-12T08:10", "Ines Kallweit")
    for tag in ["B7", "B6", "B4", "B3", "B2", "B1"]:
        walk.match(by_tag[tag], by_tag["B8"])
    for tag in ["X5", "X4", "X2", "X1"]:
        walk.match(by_tag[tag], by_tag["X3"])
    test.running()
    walk.walk()
    walk.start(3, "adjusting", "2026-05-13T08:05", "Piet Aldana")
    for tag in ["C4", "C3", "C2", "C1"]:
        walk.match(by_tag[tag], by_tag["CX"])
    test.running()
    walk.walk({"A7": "still too little to read; riser RA not matched yet"})

    sizes = sorted({(b.model, b.size) for b in branches if b.kind == "manual"},
                   key=lambda s: (s[0], list(KV_OPEN).index(s[1])))
    rows = [row for model, size in sizes for row in table_rows(model, size, size, 1.0, "1", "4")]
    rows += [["FL-A", "DN20", "percent", "0", "0", "15", "160", "5"], ["FL-A", "DN20", "percent", "100", "3.4", "", "", ""]]
    write_job(
        folder,
        [["name", "Clinic cooling"], ["site", "Marrowfield, Orchard Rise 12"], ["client", "Marrowfield Day Clinic"],
         ["units", "SI"], ["fluid", "propylene glycol"], ["concentration[%]", "30"], ["temperature[C]", "7"],
         ["tolerance_low[%]", "-10"], ["tolerance_high[%]", "10"], ["matching_band[%]", "5"],
         ["power_price[1/kWh]", "0.24"], ["currency", "EUR"], ["hours[h/yr]", "2800"], ["altitude[m]", "310"],
         ["fill_pressure[kPa]", "120"], ["code_form", "percent only"]],
        (["model", "size", "scale", "setting", "Kv", "minimum_dp[kPa]", "maximum_dp[kPa]", "accuracy[%]"], rows),
        (["tag", "parent", "serves", "kind", "design_flow[L/s]", "run_loss[kPa]", "circuit_loss[kPa]", "valve_model",
          "valve_size", "setting", "side", "policy", "policy_reason"],
         [[tag, parent, serves, by_tag[tag].kind, f"{round(by_tag[tag].design / LITRE_PER_SECOND, 3):g}", f"{run:.1f}",
           f"{own:.1f}", by_tag[tag].model, by_tag[tag].size, "" if tag == "B5" else "4.0", "return",
           "verify limiter" if tag == "B5" else "proportional", "holds its own flow" if tag == "B5" else ""]
          for tag, parent, serves, flow, run, own in schedule]),
        (["tag", "running", "speed[rpm]", "impeller[mm]", "impeller_min[mm]", "motor_power[kW]", "motor_efficiency[%]",
          "volts[V]", "amps[A]", "service_factor", "suction_diameter[mm]", "discharge_diameter[mm]",
          "suction_gauge_height[m]", "discharge_gauge_height[m]", "power_factor[%]", "guards_source"],
         [["P-21", "yes", "1450", "218", "176", "3", "86", "400", "6.4", "1.0", "82.5", "70.3", "0.6", "1.1", "81",
           "yes"]]),
        (["pump", "flow[m3/h]", "head[m]", "efficiency[%]", "npshr[m]", "impeller[mm]"],
         pump.rows(1.1, 0.9, [218, 200])),
        (["tag", "kind", "serial", "range[kPa]", "accuracy[%]", "accuracy_floor[kPa]", "calibrated", "due"],
         [meter.row() for meter in meters] +
         [["PG-1", "pressure gauge, digital", "G-31204", "600", "0.5", "0.5", "2026-01-20", "2027-01-20"]]),
        walk, test.rows, [["300", "100"], ["900", "80"], ["1000", "55"], ["600", "35"]],
        people=[["Ines Kallweit", "technician"], ["Piet Aldana", "technician"], ["Rika Osterloh", "supervisor"],
                ["Jonne Marrick", "engineer"]])
    return loop, walk


def main():
    here = pathlib.Path(__file__).resolve().parent
    folder = pathlib.Path(sys.argv[1]) if len(sys.argv) > 1 else here
    library_heating(folder / "library_heating")
    clinic_cooling(folder / "clinic_cooling")


if __name__ == "__main__":
    main()
