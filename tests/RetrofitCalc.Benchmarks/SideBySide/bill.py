"""A year of bills with NumPy: what an analyst would write. Reads what the benchmark wrote, prints seconds for one year and its total.

values.csv: one row for each 15 minutes: kilowatts, month 0-11, energy charge, then 1 or 0 for each demand charge that counts it.
prices.csv: row 1 prices of the energy charges, row 2 prices of the demand charges, row 3 the fixed amount of a month.
"""

import sys
import time

import numpy as np

folder, runs = sys.argv[1], int(sys.argv[2])
table = np.loadtxt(f"{folder}/values.csv", delimiter=",")
with open(f"{folder}/prices.csv", encoding="ascii") as file:
    energy_prices, demand_prices, fixed = (np.array([float(cell) for cell in row.split(",")]) for row in file)
kilowatts = np.ascontiguousarray(table[:, 0])
month = table[:, 1].astype(np.int64)
cell = month * len(energy_prices) + table[:, 2].astype(np.int64)
counts = table[:, 3:].astype(bool)
starts = np.searchsorted(month, np.arange(12))


def cents(amounts):
    return np.floor(np.round(amounts * 100, 6) + 0.5) / 100


def year():
    energy = np.bincount(cell, weights=kilowatts, minlength=12 * len(energy_prices)) * 0.25
    total = cents(energy.reshape(12, -1) * energy_prices).sum() + 12 * fixed[0]
    for charge, price in enumerate(demand_prices):
        peaks = np.maximum.reduceat(np.where(counts[:, charge], kilowatts, 0.0), starts)
        total += cents(peaks * price).sum()
    return total


result = year()
best = float("inf")
for _ in range(runs):
    begin = time.perf_counter()
    year()
    best = min(best, time.perf_counter() - begin)
print(f"{best:.9f} {result:.2f}")
