"""What scouting before a spray is worth on the demo's field Airport, on draws of its own.

Plain Monte Carlo on NumPy's generator, written out anew from docs/weighing.md with the demo's numbers typed in: nothing is read from the
program. Prints the gain over no insecticide of spraying in any case and of spraying from 250 aphids a plant on, how often it
comes to that, and the best threshold by sorting the counts; then the option on one normal gain beside its closed form.

    python3 bench/numpy/scouting.py [draws] [seed]
"""

import sys
from math import erf, exp, gamma, log, pi, sqrt

import numpy as np

DRAWS = int(sys.argv[1]) if len(sys.argv) > 1 else 1_000_000
RANDOM = np.random.default_rng(int(sys.argv[2]) if len(sys.argv) > 2 else 7)
SPRAY, SCOUTING = 12.62, 60 / 140
THRESHOLD, PER_THOUSAND_APHID_DAYS, WITHIN_TIMES = 250, 32, 2.5
SAMPLE, SPREAD = 38, 2.5
TIE = -0.3


def pert(low, likely, high):
    a = 1 + 4 * (likely - low) / (high - low)
    b = 1 + 4 * (high - likely) / (high - low)
    return low + (high - low) * RANDOM.beta(a, b, DRAWS)


def weibull_shape(cv):
    low, high = 0.5, 50.0
    for _ in range(200):
        k = (low + high) / 2
        spread = sqrt(gamma(1 + 2 / k) / gamma(1 + 1 / k) ** 2 - 1)
        low, high = (k, high) if spread > cv else (low, k)
    return k


def told(name, values):
    error = values.std() / sqrt(DRAWS)
    print(f"{name}: {values.mean():.3f} ± {error:.3f} $/ac, above 0 in {(values > 0).mean() * 100:.1f} of 100")


z = RANDOM.standard_normal(DRAWS)
r = 2 * np.sin(pi * TIE / 6)
w = r * z + sqrt(1 - r * r) * RANDOM.standard_normal(DRAWS)
ranks = (np.argsort(np.argsort(w)) + 0.5) / DRAWS
k = weibull_shape(0.19)
attainable = 48 / gamma(1 + 1 / k) * (-np.log(1 - ranks)) ** (1 / k)
sd = 0.17 * sqrt(0.6)
price = 10.60 * np.exp(sd * z - sd * sd / 2)
handling = pert(0.10, 0.15, 0.25)
plants = 140 * 0.90 * pert(0.65, 0.80, 0.92)
stand = 1 - 50.0 ** (-plants / (pert(75_000, 127_000, 198_000) / 1_000))
pressure = pert(0, 2, 24)
loss = pert(0.4, 0.69, 0.9) / 100
control = pert(0.75, 0.88, 0.95)
injury = pert(0, 0.8, 1.6) / 100

grown = attainable * stand
bare = grown * (1 - np.minimum(1, loss * pressure))
kept = grown * (1 - np.minimum(1, loss * pressure * (1 - control))) * (1 - injury)
gain = (price - handling) * (kept - bare) - SPRAY
growth = np.exp(-log(WITHIN_TIMES) / 1.2815515655446004 * RANDOM.standard_normal(DRAWS))
count = np.maximum(
    0,
    PER_THOUSAND_APHID_DAYS * (pressure * growth + SPREAD / sqrt(SAMPLE) * RANDOM.standard_normal(DRAWS)),
)
made = count >= THRESHOLD
told("spray in any case", gain)
told(f"scout, spray at {THRESHOLD}", np.where(made, gain, 0) - SCOUTING)
print(f"made in {made.mean() * 100:.2f} of 100")
order = np.argsort(-count)
sums = np.cumsum(gain[order]) / DRAWS
best = sums.argmax()
print(f"best threshold {count[order[best]]:.0f} aphids/plant, {sums[best] - gain[made].sum() / DRAWS:.3f} $/ac above {THRESHOLD}")

m, s = 7.0, 7.2
closed = m * 0.5 * (1 + erf(m / s / sqrt(2))) + s * exp(-((m / s) ** 2) / 2) / sqrt(2 * pi)
drawn = np.maximum(0, m + s * RANDOM.standard_normal(DRAWS)).mean()
print(f"E max(0, X), m {m}, s {s}: {closed:.4f} closed form, {drawn:.4f} drawn")
