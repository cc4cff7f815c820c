"""The weed season of SeasonField.java in NumPy, and the NumPy side of SeasonDuel.

Whole blocks of draws by days at once. Tables by days late and days to rain are worked out once for each block's own days and
gathered by draw; a pass that several programs share is worked out once. Arguments and answers as in rounds.py.
"""

import pathlib
import sys
import time

import numpy as np

FIRST, CROP, CLOSED = 60, 132, 182
LATE, RAIN, SOIL_DOUBT, LEAF_DOUBT = 8, 9, 11, 15
PAD = 60
BASE = 4.4

# half, cm at 100, tallest, I, A, c, half days, slope, open, shaded, biotypes (share, resists 9)
WEEDS = (
    (725, 6, 600, 5, 60, 0.03, 58.25, 3.56, 0, 0.1, ((1, False),)),
    (639, 8, 250, 2, 60, 0.06, 30.5, 2.38, 0.16, 0.99, ((0.7, False), (0.3, True))),
    (265, 6, 150, 0.4, 45, 0.05, 30.5, 2.38, 0.1, 0.9, ((1, False),)),
    (200, 5, 180, 1.5, 50, 0.05, 30.5, 2.38, 0.1, 0.9, ((1, False),)),
)
# kind, day, group, column of rain
BURNDOWN = ("post", 115, 9, None)
PRE = ("residual", 121, 5, RAIN)
POST = ("post", 150, 27, None)
LAYERED = ("residual", 150, 15, RAIN + 1)
RESCUE = ("post", 170, 9, None)
PROGRAMS = (
    (BURNDOWN,),
    (BURNDOWN, PRE),
    (BURNDOWN, POST),
    (BURNDOWN, PRE, POST),
    (BURNDOWN, PRE, POST, LAYERED),
    (BURNDOWN, PRE, POST, LAYERED, RESCUE),
)


class Season:
    def __init__(self, celsius):
        self.celsius = celsius
        self.days = len(celsius)
        self.day = np.arange(self.days)
        self.air = np.cumsum(np.maximum(0, celsius - 10))
        soil = np.cumsum(np.maximum(0, celsius - BASE))
        speed = np.where(celsius <= 0, 0, 2.58 ** ((celsius - 20) / 10))
        self.decay = np.concatenate(([0], np.cumsum(speed)[:-1]))
        power = 0.372
        dry = (np.log(1 - 0.23) / np.log(1 - 0.49)) ** (1 / power)
        kelvin = 273.15
        kept = np.clip(celsius, 5, 45) + kelvin
        warm = np.exp(-95000 / 8.314462618 * (1 / kept - 1 / ((60 - 32) / 1.8 + kelvin)))
        kind = ((4.18e-3 / (200 * 530)) / (3.2 / (200 * 344))) ** 1.0533
        self.exposure = kind * dry * np.maximum(1, warm)
        self.power = power
        self.weeds = []
        after = FIRST + self.day - CROP
        for half, at100, tallest, first, most, fade, halfdays, slope, bare, shaded, kinds in WEEDS:
            up = -np.expm1(-((soil / (half / np.log(2) ** 0.5)) ** 2))
            daily = np.zeros(self.days + 2 * PAD + 1)
            daily[PAD + 1 : PAD + 1 + self.days] = np.diff(up, prepend=0)
            shade = np.clip(after / (CLOSED - CROP) / 0.5, 0, 1)
            live = 1 - bare - shade * (shaded - bare)
            strength = first * np.exp(-fade * np.maximum(-10, after))
            self.weeds.append((daily, live, strength, at100, tallest, halfdays, slope, kinds))
        self.most = max(weed[4] for weed in WEEDS)

    def residual_tables(self, applied, rain):
        """Dose share by day for pairs of day applied and days to rain, worked out for all pairs at once."""
        since = self.day[None, :] - applied[:, None]
        lying = (since >= 0) & (since < rain[:, None])
        spent = np.where(lying, self.exposure[None, :], 0).sum(axis=1)
        kept = np.exp(np.log(1 - 0.49) * spent**self.power)
        left = 2.0 ** (-(self.decay[None, :] - self.decay[applied][:, None]) / 20)
        return np.where((since >= 0) & ~lying, kept[:, None] * left, 0)

    def post_tables(self, at, at100, tallest, halfdays, slope):
        """Odds and share of the cost paid, cohort by cohort, for days on which the pass is made."""
        met = self.day[None, :] <= at[:, None]
        heat = np.maximum(0, self.air[at][:, None] - self.air[None, :])
        height = np.clip(at100 * (heat / 100) ** 1.64, 0.5, tallest)
        half = 840 * (3 / 97) ** (1 / 2.5)
        odds = np.where(met, (840 / half * (10 / height) ** 1.2) ** 2.5, 0)
        together = np.maximum(0, at[:, None] - np.maximum(CROP - FIRST, self.day[None, :]))
        with np.errstate(divide="ignore"):
            paid = np.where(met, 1 / (1 + (halfdays / together) ** slope), 0)
        return odds, paid, np.where(met, 0.02, 0)

    def left_of(self, step, columns, memory):
        """For each weed what a pass leaves of each cohort, and the paid share; once for all programs."""
        if step in memory:
            return memory[step]
        kind, day, _, rain = step
        at = day - FIRST + np.rint(columns[LATE]).astype(np.int64)
        answers = []
        if kind == "residual":
            wait = np.rint(columns[rain]).astype(np.int64)
            pairs, place = np.unique(at * 512 + wait, return_inverse=True)
            odds = (1400 * self.residual_tables(pairs // 512, pairs % 512) / 200) ** 3
            for j in range(len(WEEDS)):
                left = odds[place]
                left *= columns[SOIL_DOUBT + j][:, None]
                left += 1
                np.reciprocal(left, out=left)
                answers.append((left, None))
        else:
            dates, place = np.unique(at, return_inverse=True)
            for j, (_, _, _, at100, tallest, halfdays, slope, _) in enumerate(self.weeds):
                odds, paid, missed = self.post_tables(dates, at100, tallest, halfdays, slope)
                left = odds[place]
                left *= columns[LEAF_DOUBT + j][:, None]
                left += 1
                np.reciprocal(left, out=left)
                missed = missed[place]
                left *= 1 - missed
                left += missed
                answers.append((left, paid[place]))
        memory[step] = answers
        return answers

    def run(self, columns, losses):
        memory = {}
        ups = []
        for j, weed in enumerate(self.weeds):
            shift = np.clip(columns[4 + j], -PAD, PAD)
            whole = np.floor(shift).astype(np.int64)
            part = (shift - whole)[:, None]
            start = (PAD + 1 - whole)[:, None] + self.day[None, :]
            up = weed[0][start] * (1 - part)
            up += weed[0][start - 1] * part
            ups.append(up)
        for c, program in enumerate(PROGRAMS):
            passes = [(step, self.left_of(step, columns, memory)) for step in program]
            passes.sort(key=lambda one: one[0][0] != "residual")
            load = np.zeros(columns.shape[1])
            for j, (_, live, strength, *_, kinds) in enumerate(self.weeds):
                for share, resists in kinds:
                    left = np.broadcast_to(live, ups[j].shape).copy()
                    cost = np.zeros_like(left)
                    for step, answers in passes:
                        if resists and step[2] == 9:
                            continue
                        through, paid = answers[j]
                        if paid is None:
                            left *= through
                        else:
                            after = left * through
                            left -= after
                            left *= paid
                            cost += left
                            left = after
                    left += cost
                    left *= ups[j]
                    load += share * columns[j] * (left @ strength)
            losses[c] = self.most * load / (load + self.most)


def main(folder, draws):
    season = Season(np.fromfile(folder / "celsius.f8", "<f8"))
    columns = np.fromfile(folder / "columns.f8", "<f8").reshape(-1, draws)
    expected = np.fromfile(folder / "losses.f8", "<f8").reshape(-1, draws)
    found = np.full_like(expected, np.nan)

    def once(block):
        wall = time.perf_counter_ns()
        processor = time.thread_time_ns()
        for start in range(0, draws, block):
            season.run(columns[:, start : start + block], found[:, start : start + block])
        return time.perf_counter_ns() - wall, time.thread_time_ns() - processor

    blocks = sorted({min(block, draws) for block in (250, 1000, draws)})
    quickest = {block: min(once(block)[1] for _ in range(2)) for block in blocks}
    best = min(blocks, key=quickest.get)
    difference = np.max(np.abs(found - expected))
    print(difference, best, quickest[draws] / quickest[best], np.__version__, flush=True)
    for _ in sys.stdin:
        print(*once(best), flush=True)


main(pathlib.Path(sys.argv[1]), int(sys.argv[2]))
