"""Second opinion on acceptance plans: SciPy.

Usage: python3 plans.py > plans.csv
"""
import datetime
import math
import scipy
from scipy import integrate, stats

print("# Acceptance plans: binomial plans by attributes, k method by the noncentral t, two limits by integration.")
print(f"# Source: recomputed by plans.py beside this file, SciPy {scipy.__version__}")
print(f"# Date: {datetime.date.today()}")
print("# Tolerance: attributes exact in n and c; acceptance 1e-9 relative or 1e-12; k 1e-7 relative (nct of SciPy).")
print("# Columns: kind, then attributes: p0, alpha, p1, beta, n, c | onelimit: n, p, beta, k |")
print("# twolimits: n, k, p below, p above, acceptance")
print("kind,a,b,c,d,e,f")


def smallest(p0, alpha, p1, beta):
    c = 0
    while True:
        n = c + 1
        step = 1
        while stats.binom.cdf(c, n + step, p1) > beta:
            step *= 2
        low, high = n, n + step
        if stats.binom.cdf(c, low, p1) <= beta:
            high = low
        while high - low > 1:
            middle = (low + high) // 2
            if stats.binom.cdf(c, middle, p1) > beta:
                low = middle
            else:
                high = middle
        if stats.binom.sf(c, high, p0) <= alpha:
            return high, c
        c += 1


for p0, alpha, p1, beta in [(0.01, 0.05, 0.05, 0.1), (0.002, 0.05, 0.01, 0.05), (0.0002, 0.05, 0.0027, 0.05),
                            (0.05, 0.05, 0.15, 0.075), (0.001, 0.01, 0.02, 0.01)]:
    n, c = smallest(p0, alpha, p1, beta)
    print(f"attributes,{p0},{alpha},{p1},{beta},{n},{c}")
for n, p, beta in [(10, 0.05, 0.05), (50, 0.01, 0.1), (20, 0.0027, 0.05), (200, 0.001, 0.05)]:
    k = stats.nct.ppf(1 - beta, n - 1, stats.norm.isf(p) * math.sqrt(n)) / math.sqrt(n)
    print(f"onelimit,{n},{p},{beta},{k:.12g},,")
for n, k, below, above in [(20, 2.0, 0.01, 0.01), (50, 2.5, 0.002, 0.004), (398, 2.701, 0.005, 0.005),
                           (8, 1.6, 0.03, 0.001), (100, 3.0, 0.0005, 0.0005)]:
    zu, zl, root = stats.norm.isf(above), stats.norm.isf(below), math.sqrt(n)
    law = stats.chi(n - 1, scale=(n - 1) ** -0.5)

    def inside(s):
        return max(0.0, stats.norm.cdf(root * (zu - k * s)) - stats.norm.cdf(-root * (zl - k * s))) * law.pdf(s)

    value, _ = integrate.quad(inside, 0, (zu + zl) / (2 * k), epsabs=1e-14, epsrel=1e-12, limit=2000,
                              points=[min(1, (zu + zl) / (2 * k)) * x for x in (0.8, 0.9, 0.97)])
    print(f"twolimits,{n},{k},{below},{above},{value:.15g},")
