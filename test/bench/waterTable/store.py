"""The loop of runColumn vectorised over the parameter sets in numpy, with the same formulas and the same balance; of the
daily series only the last depth is kept. stdin and output as for store.c."""

import sys
import time

import numpy as np


def run(rain, tmean, et, p, state):
    porosity, base, capacity, extinction = p["porosity"], p["base"], p["capacity"], p["extinction"]
    rise, full = 1 / porosity, (base - p["spill"]) * porosity
    undrained = np.maximum(base - p["drain"], 0) * porosity
    stressed = (1 - 0.37) * capacity
    arrives, drains, recedes = 1 - np.exp(-1 / p["delay"]), 1 - np.exp(-p["rate"]), 1 - np.exp(-p["recession"])
    snow, deficit, waiting, held = state
    balance = np.zeros_like(held)
    start = snow - deficit + waiting + held
    for fell, warmth, demand in zip(rain, tmean, et):
        if warmth < 0:
            water = 0.0
            snow += fell
        else:
            melt = np.minimum(p["melt"] * warmth, snow)
            snow -= melt
            water = fell + melt
        bypass = p["cracks"] * water / capacity * deficit
        matrix = water - bypass
        through = bypass + np.maximum(matrix - deficit, 0)
        deficit = np.maximum(deficit - matrix, 0)
        wanted = demand * p["demand"]
        left = capacity - deficit
        drawn = np.minimum(np.minimum(wanted * left / stressed, wanted), left)
        deficit += drawn
        waiting += through
        arriving = waiting * arrives
        waiting -= arriving
        held += arriving
        over = np.maximum(held - full, 0)
        held -= over
        led = np.maximum(held - undrained, 0) * drains
        held -= led
        z = base - held * rise
        taken = np.minimum((wanted - drawn) / extinction * np.maximum(extinction - z, 0), held)
        held -= taken
        outflow = held * recedes
        held -= outflow
        depth = base - held * rise
        balance += fell - drawn - over - led - taken - outflow
    assert np.all(np.abs(balance - (snow - deficit + waiting + held - start)) <= 1e-9)
    return (snow, deficit, waiting, held), depth


data = np.loadtxt(sys.stdin, skiprows=1)
sets = int(sys.argv[1])
names = ["recession", "base", "spill", "extinction", "delay", "capacity", "demand", "cracks", "drain", "rate", "melt"]
values = [0.012, 2, 0.06, 1.4, 0.5, 0.1, 1, 0.1, 0.5, 0.1, 0.003]
parameters = {name: np.full(sets, value, dtype=float) for name, value in zip(names, values)}
parameters["porosity"] = 0.02 + 0.00001 * np.arange(sets)
rain, tmean, et = np.ascontiguousarray(data.T)
begun = time.process_time()
top = (parameters["base"] - parameters["spill"]) * parameters["porosity"]
state = (np.zeros(sets), 0.3 * parameters["capacity"], np.zeros(sets), 0.5 * top)
state, _ = run(rain[:365], tmean[:365], et[:365], parameters, state)
_, depth = run(rain, tmean, et, parameters, state)
print(f"{1000 * (time.process_time() - begun):.3f}\n{depth.sum():.9f}")
