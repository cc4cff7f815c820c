"""The range over which the demo's advice for Church Quarter holds, and what its doubt is made of, on draws of its own.

Plain Monte Carlo on NumPy's generator, the margins written out anew from docs/weighing.md with the demo's numbers typed in:
nothing is read from the program. Prints the best program by corn price and by the chance that Cry3 works, where the order turns,
what knowing each is worth, and the shares of the gain's variance that are the field's and the year's.

    python3 bench/numpy/bands.py [draws] [seed]
"""

import sys

import numpy as np
from math import gamma

DRAWS = int(sys.argv[1]) if len(sys.argv) > 1 else 1_000_000
RANDOM = np.random.default_rng(int(sys.argv[2]) if len(sys.argv) > 2 else 7)
TIE = -0.3
GERMINATION = 0.95

# name: cost $/ac, seed (trait groups, refuge share in the bag), insecticide, gain column
PROGRAMS = {
    "Single trait, full rate": (186.505, ("Cry3",), 0.10, "full", "single"),
    "Single trait, half rate": (175.465, ("Cry3",), 0.10, "half", "single"),
    "Pyramid, full rate": (208.78, ("Cry3", "Cry34"), 0.05, "full", "pyramid"),
    "No trait, full rate": (164.6425, (), 0.0, "full", "plain"),
    "Pyramid, no insecticide": (184.70, ("Cry3", "Cry34"), 0.05, None, "pyramid"),
    "Single trait, no insecticide": (162.425, ("Cry3",), 0.10, None, "single"),
}
ADVISED, BASELINE = "Single trait, full rate", "Single trait, no insecticide"
FAILED = {"Cry3": 0.25, "Cry34": 0.30}
NEIGHBOURS = 0.2
FIELD = ("loss", "Cry3", "Cry34", "trait3", "trait34", "single", "pyramid", "plain")


def pert(low, likely, high):
    a = 1 + 4 * (likely - low) / (high - low)
    b = 1 + 4 * (high - likely) / (high - low)
    return low + (high - low) * RANDOM.beta(a, b, DRAWS)


def around(median, spread, z):
    """A share whose log-odds are spread about that of a middle."""
    return 1 / (1 + (1 - median) / median * np.exp(-spread * z))


def stand():
    """Share of the yield that 33,000 seeds/ac keep: Nafziger's quadratic about a best stand and a sharpness that are drawn."""
    plants = 33 * GERMINATION * pert(0.70, 1.00, 1.00)
    best = pert(30, 35, 39)
    outside = (plants < 10) | (plants > 1.25 * best)
    assert not outside.any()
    return 1 - np.maximum(0, pert(0.6, 1.0, 2.3) * 0.0007737 * (30.33 * (plants - best) / best) ** 2)


def weibull_shape(cv):
    low, high = 0.5, 50.0
    for _ in range(200):
        k = (low + high) / 2
        spread = np.sqrt(gamma(1 + 2 / k) / gamma(1 + 1 / k) ** 2 - 1)
        low, high = (k, high) if spread > cv else (low, k)
    return k


def draw():
    r = 2 * np.sin(np.pi * TIE / 6)
    z = RANDOM.standard_normal(DRAWS)
    w = r * z + np.sqrt(1 - r * r) * RANDOM.standard_normal(DRAWS)
    sd = 0.22 * np.sqrt(0.6)
    ranks = (np.argsort(np.argsort(w)) + 0.5) / DRAWS
    k = weibull_shape(0.16)
    granule = RANDOM.standard_normal(DRAWS)  # where it works well at one rate it does at another
    return {
        "price": 4.40 * np.exp(sd * z - sd * sd / 2),
        "yield": 205 / gamma(1 + 1 / k) * (-np.log(1 - ranks)) ** (1 / k),
        "handling": pert(0.25, 0.35, 0.55),
        "pressure": pert(0.9, 1.7, 2.6),
        "loss": 0.15 * (1 + 0.14 / 1.68 / 0.15 * RANDOM.standard_normal(DRAWS)),
        "Cry3": (RANDOM.random(DRAWS) < 0.50).astype(float),
        "Cry34": (RANDOM.random(DRAWS) < 0.55).astype(float),
        "trait3": around(0.9, 0.5, RANDOM.standard_normal(DRAWS)),
        "trait34": around(0.9, 0.5, RANDOM.standard_normal(DRAWS)),
        "half": around(0.58, 1.0, granule),
        "full": around(0.75, 1.0, granule),
        "stand": stand(),
        "single": pert(-3, 0, 3),
        "pyramid": pert(-2.5, 0.5, 3.5),
        "plain": pert(-3, 0, 3),
    }


def margin(program, x):
    cost, groups, bare, spray, gain = PROGRAMS[program]
    hit = x["loss"] * np.minimum(3, x["pressure"])
    if spray:
        hit = hit * (1 - x[spray])
    through = np.ones(DRAWS)
    for group in groups:
        works = x["trait3" if group == "Cry3" else "trait34"]
        through = through * (1 - (x[group] * works + (1 - x[group]) * FAILED[group]))
    left = bare * (1 - NEIGHBOURS) + (1 - bare) * through if groups else 1
    bushels = np.maximum(0, x["yield"] * x["stand"] * (1 - np.minimum(1, hit * left)) + x[gain])
    return (x["price"] - x["handling"]) * bushels - cost


def means(x, name, value):
    held = dict(x)
    held[name] = np.full(DRAWS, value)
    return {program: margin(program, held).mean() for program in PROGRAMS}


def bands(curve, low, high, steps=400):
    at = np.linspace(low, high, steps + 1)
    best = [max((m := curve(v)), key=m.get) for v in at]
    found = [(best[0], low)]
    for i in range(1, len(at)):
        if best[i] != best[i - 1]:
            found.append((best[i], (at[i] + at[i - 1]) / 2))
    return found


def main():
    x = draw()
    print(f"{DRAWS:,} draws")
    drawn = {program: margin(program, x) for program in PROGRAMS}
    for program, m in drawn.items():
        print(f"  {program:30s} {m.mean():8.2f} ± {m.std() / np.sqrt(DRAWS):.2f}")
    # Price enters by a straight line: two values give all.
    low, high = np.quantile(x["price"], [0.01, 0.99])
    at3, at6 = means(x, "price", 3.0), means(x, "price", 6.0)
    line = lambda p: {c: at3[c] + (at6[c] - at3[c]) * (p - 3) / 3 for c in PROGRAMS}
    print("corn price:", "; ".join(f"{c} from ${v:.2f}" for c, v in bands(line, low, high)), f"to ${high:.2f}")
    works, fails = means(x, "Cry3", 1.0), means(x, "Cry3", 0.0)
    mixed = lambda q: {c: q * works[c] + (1 - q) * fails[c] for c in PROGRAMS}
    print("Cry3 works:", "; ".join(f"{c} from {v:.3f}" for c, v in bands(mixed, 0, 1)))
    print(f"  value of knowing it: ${0.5 * max(works.values()) + 0.5 * max(fails.values()) - max(mixed(0.5).values()):.2f}/ac")
    gain = drawn[ADVISED] - drawn[BASELINE]
    shift = DRAWS // 2
    other = {name: column if name in FIELD else np.roll(column, shift) for name, column in x.items()}
    moved = margin(ADVISED, other) - margin(BASELINE, other)
    field = np.cov(gain, moved)[0, 1] / gain.var()
    year = np.cov(np.roll(gain, shift), moved)[0, 1] / gain.var()
    print(f"gain over the baseline: {gain.mean():.2f}; field {field:.3f}, year {year:.3f}, both {1 - field - year:.3f}")
    for answer, name in ((1, "works"), (0, "fails")):
        there = x["Cry3"] == answer
        print(f"  Cry3 {name}: {gain[there].mean():.2f}, ahead in {100 * (gain[there] > 0).mean():.1f} of 100")


main()
