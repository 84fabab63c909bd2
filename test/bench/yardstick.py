"""Times the same refits with scipy and numpy, for a ratio taken in one run. Usage: yardstick.py DATA.json"""

import json
import sys
import time

import numpy as np
from scipy.optimize import curve_fit


def valley(x, base, depth, centre, spread):
    return base - depth * np.exp(-((x - centre) ** 2) / (2 * spread**2))


def main():
    data = json.load(open(sys.argv[1]))
    x = np.array(data["valley"]["x"])
    fitted = np.array(data["valley"]["fitted"])
    residuals = np.array(data["valley"]["residuals"])
    start = data["valley"]["parameters"]
    rng = np.random.default_rng(1)
    refits = 300
    draws = [fitted + rng.choice(residuals, len(x)) for _ in range(refits)]
    began = time.perf_counter()
    for y in draws:
        try:
            curve_fit(valley, x, y, p0=start)
        except RuntimeError:
            pass
    curve_fit_us = (time.perf_counter() - began) / refits * 1e6

    design = np.array(data["surface"]["design"])
    y = np.array(data["surface"]["y"])
    n = len(y)
    cases = 2000
    picks = rng.integers(0, n, (cases, n))
    began = time.perf_counter()
    for pick in picks:
        np.linalg.lstsq(design[pick], y[pick], rcond=None)
    lstsq_us = (time.perf_counter() - began) / cases * 1e6
    print(json.dumps({"curveFitUs": curve_fit_us, "lstsqUs": lstsq_us}))


main()
