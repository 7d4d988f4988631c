"""Median time of scipy's sparse direct solve of the matrix in a file, ms, and the solution."""
import statistics
import sys
import time

import numpy as np
from scipy.sparse import csc_matrix
from scipy.sparse.linalg import spsolve

data = np.fromfile(sys.argv[1])
n, m = int(data[0]), int(data[1])
rows, columns, values = data[2 : 2 + m], data[2 + m : 2 + 2 * m], data[2 + 2 * m : 2 + 3 * m]
right = data[2 + 3 * m :]
matrix = csc_matrix((values, (rows.astype(int), columns.astype(int))), (n, n))
times = []
for _ in range(9):
    start = time.perf_counter()
    solution = spsolve(matrix, right)
    times.append((time.perf_counter() - start) * 1000)
print(statistics.median(times), *solution)
