"""Vine Bottom of the demo reckoned anew: the daily cohorts of docs/weed-season.md on draws of its own.

Reads what the demo says (its CSV files) and nothing of Plumbrow's. Prints for each program the mean loss to weeds and how often it
beats the baseline, at full loss per plant and parts of it, with the rating of the residual read in one of two ways:

    cumulative   control of all that came up by the day it was seen (fitted)
    day          control of that day's seedlings, as before

    python3 bench/numpy/vine.py [--draws 200000] [--seed 1] [--reading cumulative|day] [--spread 0.8] [--weibull-rain]

--spread is the SD of ln(loss per plant) between fields; 0 holds it at its one number.
"""

import argparse
import csv
import math
import pathlib

import numpy as np

DEMO = pathlib.Path(__file__).parents[2] / "app/src/main/resources/demo"
FIELD = "Vine Bottom"
LAST = 273  # 30 September
MIDDLES = np.array([16, 46, 75, 106, 136, 167, 197, 228, 259, 289, 320, 350])

# Burcucumber in corn (docs/weed-season.md, KnownWeeds): emergence, growth, competition, shade, depth.
HALF_UP, UP_SHAPE, UP_BASE = 725, 2, 4.4
CM_AT_100, GROWTH_POWER, TALLEST, GROWTH_BASE = 6, 1.64, 600, 10
PER_DAY, HALF_DAYS, WAIT_SLOPE = 0.03, 58.25, 3.56
DIE_OPEN, DIE_SHADED = 0, 0.1
USUAL_DEPTH, DEEPEST = 3, 10

# Atrazine: half-life in the field 60 d (Wauchope et al. 1992), Koc 100, solubility 33 mg/L, vapour pressure 3.85e-5 Pa.
HALF_LIFE, KOC, SOLUBLE, VAPOUR = 60, 100, 33, 3.85e-5
SOIL_SLOPE, LEAF_SLOPE, HEIGHT_POWER, MISSED = 3, 2.5, 1.2, 0.02
TRIAL_C = [-2.8, -0.8, 4.7, 11.6, 17.7, 21.9, 23.6, 22.8, 19.1, 13.0, 5.6, -0.4]  # Champaign, Illinois


def rows(name, **where):
    with open(DEMO / f"{name}.csv", newline="", encoding="utf-8") as file:
        return [r for r in csv.DictReader(file) if all(r[k] == v for k, v in where.items())]


def day_of(date):
    year, month, day = map(int, date.split("-"))
    return sum([31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][: month - 1]) + day


def daily(months):
    """Days 1 to LAST (and five before) from monthly means, straight lines between the middles."""
    x = np.concatenate(([MIDDLES[-1] - 365], MIDDLES, [MIDDLES[0] + 365]))
    y = np.concatenate(([months[-1]], months, [months[0]]))
    return np.interp(np.arange(-4, LAST + 1), x, y)


class Weather:
    def __init__(self, celsius):
        padded = daily(np.asarray(celsius, float))
        self.air = padded[5:]
        self.soil = np.array([padded[i : i + 5].mean() for i in range(1, LAST + 1)])
        speed = np.where(self.soil <= 0, 0, 2.58 ** ((self.soil - 20) / 10))
        self.warm = np.concatenate(([0], np.cumsum(speed)[:-1]))  # warm days before each day
        heat = np.cumsum(np.maximum(0, self.soil - UP_BASE))
        scale = HALF_UP / math.log(2) ** (1 / UP_SHAPE)
        self.up = 1 - np.exp(-((heat / scale) ** UP_SHAPE))
        self.growing = np.cumsum(np.maximum(0, self.air - GROWTH_BASE))


def pert(random, low, likely, high, size):
    a = 1 + 4 * (likely - low) / (high - low)
    return low + (high - low) * random.beta(a, 6 - a, size)


def rain_wait(random, month, size, weibull):
    """Days until 10 mm: rains by chance, amounts exponential. By the two moments as a Weibull, or rain by rain."""
    gap = 30.4 / float(month["rain_days"])
    each = float(month["rain_in"]) * 25.4 / float(month["rain_days"])
    if not weibull:
        return random.gamma(1 + random.poisson(10 / each, size), gap)
    h = 10 / each
    mean, cv = gap * (1 + h), math.sqrt(1 + 2 * h) / (1 + h)
    low, high = 0.1, 20.0
    for _ in range(200):
        shape = (low + high) / 2
        found = math.sqrt(math.gamma(1 + 2 / shape) / math.gamma(1 + 1 / shape) ** 2 - 1)
        low, high = (shape, high) if found > cv else (low, shape)
    return mean / math.gamma(1 + 1 / shape) * random.weibull(shape, size)


def start_of(ratings, days, reading, trial):
    """Log-odds of control at application at the rated rate that give the ratings."""
    fade = SOIL_SLOPE * math.log(2) / HALF_LIFE
    if reading == "day":
        return np.log(ratings / (1 - ratings)) + fade * days
    laid = 125 - 1
    index = np.arange(laid + 1, laid + 1 + days)
    came = trial.up[index] - trial.up[index - 1]
    warm = trial.warm[index] - trial.warm[laid]
    low, high = np.full(ratings.shape, -20.0), np.full(ratings.shape, 30.0)
    for _ in range(60):
        middle = (low + high) / 2
        seen = (came / (1 + np.exp(fade * warm - middle[:, None]))).sum(axis=1) / came.sum()
        low, high = np.where(seen < ratings, middle, low), np.where(seen < ratings, high, middle)
    return (low + high) / 2


def degree_days(months, planted, needed):
    low, high = (daily(np.array([float(m[k]) for m in months]))[5:] for k in ("low_f", "high_f"))
    total, day = 0, planted
    while total < needed:
        day += 1
        total += (np.clip(low[day - 1], 50, 86) + np.clip(high[day - 1], 50, 86)) / 2 - 50
    return day


def main():
    ask = argparse.ArgumentParser()
    ask.add_argument("--draws", type=int, default=200_000)
    ask.add_argument("--seed", type=int, default=1)
    ask.add_argument("--reading", choices=("cumulative", "day"), default="cumulative")
    ask.add_argument("--spread", type=float, default=0.0)
    ask.add_argument("--weibull-rain", action="store_true")
    ask.add_argument("--depth", type=float, default=None)
    asked = ask.parse_args()
    n = asked.draws
    random = np.random.default_rng(asked.seed)

    months = sorted(rows("climate", place=FIELD), key=lambda m: int(m["month"]))
    weather = Weather([(float(m["mean_f"]) - 32) / 1.8 for m in months])
    trial = Weather(TRIAL_C)
    weed = rows("weeds", field=FIELD)[0]
    soil = rows("ratings", weed="burcucumber", timing="soil")[0]
    leaf = rows("ratings", weed="burcucumber", timing="leaf")[0]
    depth = asked.depth or np.mean([float(r["depth_in"]) for r in rows("floor_checks", field=FIELD)])
    mixed = depth * 2.54 / 2  # tines mix half as deep as they run
    passes = {}
    for r in rows("passes", field=FIELD):
        passes.setdefault(r["program"], []).append(r)
    planted = day_of(rows("passes", field=FIELD, kind="seed")[0]["date"])
    crop, closed = degree_days(months, planted, 115), degree_days(months, planted, 840)

    draw = lambda row, name, size=n: pert(random, *(float(row[f"{name}_{p}"]) for p in ("low", "likely", "high")), size)
    density = draw(weed, "density")
    per_plant = float(weed["first_plant_loss_pct"]) * np.exp(asked.spread * random.standard_normal(n))
    shift = pert(random, -10, 0, 10, n)
    timing = rows("crop_days", field=FIELD)[0]
    late = np.rint(
        pert(random, float(timing["late_low_days"]), float(timing["late_likely_days"]), float(timing["late_high_days"]), n)
    ).astype(int)
    wait = np.rint(rain_wait(random, months[4], n, asked.weibull_rain)).astype(int)
    start = start_of(draw(soil, "control"), int(soil["seen_days"]), asked.reading, trial)
    on_leaf = draw(leaf, "control")
    leaf_odds = on_leaf / (1 - on_leaf)

    # What one plant of the middle density would have been as seedlings, its flush on time.
    day = np.arange(1, LAST + 1)
    shade = np.clip((day - crop) / (closed - crop) / 0.5, 0, 1)
    live = 1 - DIE_OPEN - shade * (DIE_SHADED - DIE_OPEN)
    came = np.diff(weather.up, prepend=0)
    seedlings = 1 / ((came * live).sum() / came.sum())
    strength = np.exp(-PER_DAY * np.maximum(-10, day - crop))
    heat = np.concatenate((np.zeros(1), weather.growing))

    loads = {name: np.empty(n) for name in passes}
    for at in range(0, n, 5000):
        part = slice(at, min(n, at + 5000))
        size = part.stop - part.start
        # Flush: what is up by the end of day d is what would have been up s days before.
        time = day[None, :] - shift[part][:, None]
        up = np.interp(time, np.arange(0, LAST + 1), np.concatenate(([0], weather.up)))
        daily_up = np.diff(up, axis=1, prepend=0)
        for name, program in passes.items():
            fresh = daily_up.copy()
            for r in program:
                if r["kind"] == "tillage":  # brings up 5 % more, half of them in 80 degree days above 0
                    made = day_of(r["date"])
                    warmth = np.where(day > made, np.cumsum(np.maximum(0, weather.soil - 4.4)), 0)
                    base = np.cumsum(np.maximum(0, weather.soil - 4.4))[made - 1]
                    x = np.where(day > made, warmth - base, 0)
                    more = 1 - 2.0 ** (-((x / 80) ** 2))
                    fresh = fresh + 0.05 * np.diff(more, prepend=0)
            left = fresh * live
            for r in program:
                if r["product"] == "Ironweir 4L":
                    made = np.full(size, day_of(r["date"]))
                    if day_of(r["date"]) > planted:
                        made = made + late[part]
                    dose = float(r["rate"]) / float(soil["rate"])
                    begun = made + wait[part]
                    lain = weather.warm[None, :] - weather.warm[made - 1][:, None]
                    lost = vapour(weather, made, wait[part])
                    odds = np.exp(start[part])[:, None] * (dose * (1 - lost)[:, None] * 2.0 ** (-lain / HALF_LIFE)) ** SOIL_SLOPE
                    left = left / (1 + np.where(day[None, :] >= begun[:, None], odds, 0))
            cost = np.zeros_like(left)
            for r in program:
                post = r["product"] == "Stillmeadow K"
                if not post and r["kind"] != "tillage":
                    continue
                made = np.full(size, day_of(r["date"])) + (late[part] if post else 0)
                met = day[None, :] <= made[:, None]
                height = np.maximum(0, weather.growing[made - 1][:, None] - weather.growing[None, :])
                height = np.clip(CM_AT_100 * (height / 100) ** GROWTH_POWER, 0.5, TALLEST)
                if post:
                    reference = float(leaf["height_in"]) * 2.54
                    odds = leaf_odds[part][:, None] * (
                        float(r["rate"]) / float(leaf["rate"]) * (reference / height) ** HEIGHT_POWER
                    ) ** LEAF_SLOPE
                    through = MISSED + (1 - MISSED) / (1 + odds)
                else:
                    through = 1 - 0.95 / (1 + (height / 25) ** 4)
                through = np.where(met, through, 1)
                together = np.maximum(0, made[:, None] - np.maximum(crop, day)[None, :])
                with np.errstate(divide="ignore"):
                    paid = 1 / (1 + (HALF_DAYS / together) ** WAIT_SLOPE)
                cost += left * (1 - through) * paid
                left = left * through
            loads[name][part] = ((left + cost) * strength).sum(axis=1)

    price_tie(random, n, passes, loads, seedlings * density, per_plant, float(weed["most_loss_pct"]), asked)


def vapour(weather, made, wait):
    """Share lost as vapour while it lies on a moist surface, days until the rain."""
    warmth = np.exp(-95000 / 8.314462618 * (1 / (np.clip(weather.soil, 5, 45) + 273.15) - 1 / (15.5556 + 273.15)))
    kind = ((VAPOUR / (KOC * SOLUBLE)) / (3.2 / (200 * 344))) ** 1.0533
    spent = np.concatenate(([0], np.cumsum(kind * warmth)))
    until = np.minimum(LAST, made - 1 + wait)
    return 1 - np.exp(math.log(0.51) * (spent[until] - spent[made - 1]) ** 0.372)


def price_tie(random, n, passes, loads, seedlings, per_plant, most, asked):
    """Margins: price and attainable yield tied by a rank correlation of -0.3, drying, genetic gain, costs."""
    assumptions = {(r["crop"] or r["field"], r["quantity"]): r for r in rows("assumptions")}
    z = random.standard_normal((2, n))
    pull = 2 * math.sin(math.pi * float(assumptions["corn", "price-yield tie"]["a"]) / 6)
    price = assumptions["corn", "price"]
    s = float(price["b"]) * math.sqrt(float(price["c"]))
    usd = float(price["a"]) * np.exp(s * z[0] - s * s / 2)
    yields = assumptions[FIELD, "yield"]
    low, high = 0.5, 50.0
    for _ in range(200):
        shape = (low + high) / 2
        found = math.sqrt(math.gamma(1 + 2 / shape) / math.gamma(1 + 1 / shape) ** 2 - 1)
        low, high = (shape, high) if found > float(yields["b"]) else (low, shape)
    score = pull * z[0] + math.sqrt(1 - pull * pull) * z[1]
    below = 0.5 * (1 + np.vectorize(math.erf)(score / math.sqrt(2)))
    attainable = float(yields["a"]) / math.gamma(1 + 1 / shape) * (-np.log1p(-below)) ** (1 / shape)
    drying = assumptions["corn", "handling"]
    net = usd - pert(random, *(float(drying[k]) for k in "abc"), n)
    seed = rows("seeds", product="Hollowbrook 103 HT")
    gain = pert(random, -3, 0, 3, n)
    shelf = {r["product"]: float(r["price_usd"]) for r in rows("shelf") if r["product"] in ("Ironweir 4L", "Stillmeadow K", "Hollowbrook 103 HT")}
    gallon = {"qt/ac": 0.25, "fl oz/ac": 1 / 128}
    cost = {}
    for name, program in passes.items():
        cost[name] = sum(float(r["charge_usd_ac"]) for r in program)
        for r in program:
            if r["kind"] == "spray":
                cost[name] += float(r["rate"]) * gallon[r["rate_unit"]] * shelf[r["product"]]
            if r["kind"] == "seed":
                cost[name] += float(r["rate"]) * 1000 / float(seed[0]["seeds_per_unit"]) * shelf[r["product"]]
    print(f"{n} draws, seed {asked.seed}, reading {asked.reading}, spread of ln I {asked.spread}, "
          f"rain {'by its Weibull' if asked.weibull_rain else 'by its rains'}")
    for part in (1, 0.25, 0.15, 0.1):
        margins = {}
        for name in passes:
            load = part * per_plant * seedlings * loads[name]
            loss = load / (1 + load / most)
            margins[name] = net * np.maximum(0, attainable * (1 - loss / 100) + gain) - cost[name]
            if part == 1:
                print(f"  {name:40} loss {loss.mean():6.2f} %  margin {margins[name].mean():7.2f} $/ac")
        base = margins["Before emergence only"]
        print(f"  x{part:<5}" + "; ".join(
            f"{name} beats it {np.mean(m > base):.4f}" for name, m in margins.items() if m is not base))


main()
