"""Closed-form Sobol indices of the g-function and of the Ishigami function.

Usage: python3 sobol.py > sobol.csv
"""
import datetime
import math

print("# Source: closed forms in Saltelli et al., Global Sensitivity Analysis: The Primer (2008); recomputed by sobol.py")
print(f"# Date: {datetime.date.today()}")
print("# Tolerance: to the printed digits. Columns: function, input, first, total.")
print("function,input,first,total")
a = [0, 1, 4.5, 9, 99, 99, 99, 99]
part = [1 / (3 * (1 + x) ** 2) for x in a]
whole = math.prod(1 + v for v in part) - 1
for i, v in enumerate(part):
    rest = math.prod(1 + w for j, w in enumerate(part) if j != i)
    print(f"g,{i},{v / whole:.6f},{v * rest / whole:.6f}")
A, B = 7, 0.1
v1 = 0.5 * (1 + B * math.pi**4 / 5) ** 2
v2 = A * A / 8
v13 = B * B * math.pi**8 * (1 / 18 - 1 / 50)
v = v1 + v2 + v13
for i, (s, t) in enumerate([(v1, v1 + v13), (v2, v2), (0, v13)]):
    print(f"ishigami,{i},{s / v:.6f},{t / v:.6f}")
