"""Chances of failing counted by plain vectors: every sample, year, course of the drain and month of the flood."""
import json
import os
import sys
import time

import numpy as np

folder = sys.argv[1]
plan = json.load(open(os.path.join(folder, "plan.json")))
data = {name: np.fromfile(os.path.join(folder, name + ".bin")) for name in plan["arrays"]}
N, Y, P = plan["samples"], plan["years"], len(plan["months"])
K = np.repeat(data["k"], Y)
WET, DRY = np.repeat(data["wet"], Y), np.repeat(data["dry"], Y)
WETS = plan["wetMonths"]


def step(values):
    return (values - data["grid"][0]) / 0.001


def lookup(table, levels):
    at = np.clip(step(levels), 0, len(table) - 1.001)
    i = at.astype(np.int64)
    return table[i] + (at - i) * (table[i + 1] - table[i])


def undrained(case, low, high, tub):
    up = high if case["cutoff"] is None else np.minimum(high, np.maximum(case["cutoff"], low))
    head = np.maximum(up, low)
    return np.maximum(head, tub) if plan["ring"] else head


def emptied(case, at, head, tub):
    rise = head - at["hold"]
    lifts = np.zeros(head.shape, bool)
    up = rise > 0
    h, r = head[up], rise[up]
    missing = 0.02 * at["floorArea"]
    if plan["ring"]:
        level = np.minimum(tub[up], h)
        base = lookup(data["volume"], np.array([at["hold"]]))[0]
        missing = missing - np.where(level > at["hold"], lookup(data["volume"], level) - base, 0)
    area = (at["floorArea"] + lookup(data["area"], h - case["raise"] - case["ballast"])) / 2
    lifts[up] = 4 * K[up] * np.sqrt(area / np.pi) * r * plan["seconds"] >= missing
    slumps = np.where(head > -at["side"] / 2, WET, DRY) < at["side"]
    return lifts | slumps


def chance(case, at):
    way = case["way"]
    tub = data["tub" + way] if plan["ring"] else None
    yearly = undrained(case, data["low"], data["high"], tub)
    heads, tubs = [], []
    for q in range(P):
        t = data["tubEmptied" + way][q::P] if plan["ring"] else None
        heads.append(undrained(case, data["lowEmptied"][q::P], data["highEmptied"][q::P], t))
        tubs.append(t)
    courses = [(None, np.ones(N))]
    if case["drain"] == "sump":
        courses = [(None, data["pumpOut"]), ("works", 1 - data["pumpOut"])]
    if case["drain"] == "outlet":
        out, stuck = data["blocked"], plan["flapStuck"]
        courses = [(None, out), ("works", (1 - out) * (1 - stuck)), ("stuck", (1 - out) * stuck)]
    total = 0.0
    for state, weight in courses:
        def bound(u, water):
            if state is None:
                return u
            least, most = at[state][water]
            return np.maximum(np.minimum(u, most), least)

        drawn = bound(yearly, "flood") > case["drawn"]
        calm = [emptied(case, at, bound(heads[q], "calm"), tubs[q]) for q in range(P)]
        fails = np.zeros(N * Y)
        floods = [q for q in range(P) if plan["months"][q] in WETS] if state and case["drain"] == "outlet" else []
        for f in floods:
            month = list(calm)
            month[f] = emptied(case, at, bound(heads[f], "flood"), tubs[f])
            fails += np.logical_or.reduce([drawn] + month)
        fails += (len(WETS) - len(floods)) * np.logical_or.reduce([drawn] + calm)
        total += np.sum(np.repeat(weight, Y) * fails) / len(WETS)
    return total / (N * Y)


times = []
for _ in range(plan["repeats"]):
    start = time.perf_counter()
    chances = [[chance(case, at) for at in case["depths"]] for case in plan["cases"]]
    times.append((time.perf_counter() - start) * 1000)
print(json.dumps({"ms": sorted(times)[len(times) // 2], "chances": chances}))
