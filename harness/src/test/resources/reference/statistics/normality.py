"""Second opinion on the Anderson-Darling statistic: SciPy.

Usage: python3 normality.py > normality.csv
"""
import datetime
import warnings

import numpy
import scipy
from scipy import stats

warnings.simplefilter("ignore")
print("# Anderson-Darling statistic of a normal law with estimated mean and standard deviation, not corrected for size.")
print("# The i-th of n values is ((7919 i mod 10007) / 10007)^power, i from 1.")
print(f"# Source: recomputed by normality.py beside this file, SciPy {scipy.__version__}")
print(f"# Date: {datetime.date.today()}")
print("# Tolerance: 1e-9 (sums of logarithms in another order).")
print("n,power,statistic")
for n, power in [(8, 1), (20, 1), (60, 1), (60, 2), (200, 3)]:
    values = numpy.array([((7919 * i) % 10007 / 10007) ** power for i in range(1, n + 1)])
    print(f"{n},{power},{stats.anderson(values).statistic:.15g}")
