"""The same daily loops vectorised over the parameter sets in numpy. stdin as for store.c; prints a time (ms) a repeat."""

import sys
import time

import numpy as np


def run(rain, tmean, et, porosity, sets):
    base, spill, extinction, capacity, cracks = 2.0, 0.06, 1.4, 0.1, 1.0
    stress_from = 0.37 * capacity
    slope = 1 / (capacity - stress_from)
    recede, arrives, drains = 1 - np.exp(-0.012), 1 - np.exp(-1 / 0.5), 1 - np.exp(-0.1)
    top, drain = base - spill, base - 0.5
    per_metre = 1 / porosity
    deficit = np.full(sets, 0.3 * capacity)
    y = np.full(sets, 0.5 * top)
    waiting = np.zeros(sets)
    total = np.zeros(sets)
    pack = np.zeros(sets)
    melt_factor = np.full(sets, 0.003)
    for fell, warmth, wanted in zip(rain, tmean, et):
        if warmth < 0:
            pack += fell
            water = 0.0
        else:
            melt = np.minimum(melt_factor * warmth, pack)
            pack -= melt
            water = fell + melt
        bypass = water * cracks * deficit
        matrix = water - bypass
        through = bypass + np.maximum(matrix - deficit, 0)
        deficit = np.maximum(deficit - matrix, 0)
        drawn = wanted * np.minimum((capacity - deficit) * slope, 1)
        drawn = np.minimum(drawn, capacity - deficit)
        deficit += drawn
        unmet = wanted - drawn
        waiting += through
        arriving = waiting * arrives
        waiting -= arriving
        y += arriving * per_metre
        y = np.minimum(y, top)
        y -= np.maximum(y - drain, 0) * drains
        taken = np.minimum(unmet * np.maximum(1 - (base - y) / extinction, 0), y * porosity)
        y -= taken * per_metre
        y -= y * recede
        total += base - y
    return total


data = np.loadtxt(sys.stdin, skiprows=1)
count, repeats = int(sys.argv[1]), int(sys.argv[2])
spread = 0.02 + 0.00001 * np.arange(count)
for _ in range(repeats):
    start = time.perf_counter()
    run(data[:, 0], data[:, 1], data[:, 2], spread, count)
    print(f"{1000 * (time.perf_counter() - start):.3f}")
