"""Second opinion on the noncentral t where R's series is limited (noncentrality above 37.6), and for broken degrees of freedom: SciPy.

Usage: /usr/bin/python3 noncentral_t.py > noncentral_t.csv
"""
import datetime
import scipy
from scipy import integrate, stats

print("# Noncentral t with large noncentrality: P(T <= t) by integrating the normal tail over the chi law.")
print(f"# Source: recomputed by noncentral_t.py beside this file, SciPy {scipy.__version__}")
print(f"# Date: {datetime.date.today()}")
print("# Tolerance: 1e-9 absolute, the integration's own error estimate. Columns: t, nu, delta, value.")
print("t,nu,delta,value")
for t, nu, delta in [(60, 49, 55), (100, 999, 98), (45, 9, 40), (200, 99, 190), (52, 4, 50), (-40, 30, -42),
                     (0.5, 1.25, 0.7), (-0.875, 1.09, 0.1), (868.8, 1.24, 159), (2, 0.5, 1), (-3, 2.5, 2)]:
    law = stats.chi(nu, scale=nu**-0.5)
    value, _ = integrate.quad(
        lambda s: stats.norm.cdf(t * s - delta) * law.pdf(s), 0, 1 + 40 / (2 * nu) ** 0.5,
        points=[delta / t, 1], epsabs=1e-13, epsrel=1e-12, limit=2000)
    print(f"{t},{nu},{delta},{value:.15g}")
