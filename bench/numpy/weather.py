"""Years of weather made again in NumPy, beside those that WeatherRun.java made and what was counted.

The generator is written here on its own, with its own random numbers: what is compared is statistics over thousands of years.
Arguments: the file of WeatherRun, the file for the section. Ends with 1 where the two differ by more than chance.
"""

import pathlib
import sys

import numpy as np

# Champaign, Illinois, 1995 to 2023: chances of a wet day after a dry and a wet one, gamma shape and scale [mm], temperatures [C].
AFTER_DRY = (.331, .312, .291, .324, .329, .290, .251, .217, .201, .264, .265, .325)
AFTER_WET = (.539, .472, .503, .493, .533, .443, .407, .400, .380, .472, .500, .487)
SHAPE = (.593, .590, .673, .698, .724, .661, .640, .651, .605, .657, .622, .589)
SCALE = (7.90, 9.75, 10.26, 11.07, 12.39, 17.04, 16.51, 15.83, 17.98, 12.68, 11.08, 9.33)
HIGH = ((2.4, 4.5, 9.7, 16.1, 21.6, 25.9, 27.9, 27.3, 23.8, 17.3, 10.3, 4.7),
        (-.3, 2.6, 9.4, 17.3, 23.7, 27.1, 28.6, 28.2, 25.0, 18.8, 10.1, 2.5))
LOW = ((-4.7, -3.2, 1.3, 7.4, 13.0, 17.6, 19.7, 18.9, 15.1, 8.9, 2.6, -2.5),
       (-7.5, -5.8, -1.0, 5.6, 12.3, 16.7, 18.4, 17.1, 13.0, 7.0, .1, -5.3))
HIGH_SD = ((6.9, 6.9, 6.5, 5.8, 5.0, 4.0, 3.3, 3.3, 4.0, 5.0, 5.9, 6.5),
           (6.9, 6.9, 6.5, 5.7, 4.8, 3.9, 3.3, 3.5, 4.2, 5.1, 6.0, 6.6))
LOW_SD = ((6.4, 6.2, 5.7, 4.8, 3.8, 2.5, 1.8, 2.2, 3.3, 4.5, 5.5, 6.1),
          (6.2, 6.1, 5.7, 5.1, 4.2, 3.4, 3.0, 3.1, 3.8, 4.6, 5.4, 6.0))
A = np.array([[.576, .119], [.376, .421]])
B = np.array([[.741, 0], [.383, .539]])
DAYS = (31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)
MIDDLE = (16, 46, 75, 106, 136, 167, 197, 228, 259, 289, 320, 350)
GAUGE = 1.56
WITH_RAIN = (.04, -.03, .12, .05, -.26, -.11, -.30, .01, -.16, -.22, -.01, .16)
YEARS = 2000
MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")

# NOAA nClimDiv 1990 to 2019: SD between years of the mean temperature [F], CV of the rain, of statewide months.
STATES = {
    "IL": ((4.76, 5.51, 4.57, 3.06, 3.14, 1.85, 2.55, 2.49, 2.76, 2.28, 4.48, 4.58),
           (0.479, 0.515, 0.349, 0.364, 0.406, 0.424, 0.362, 0.339, 0.505, 0.515, 0.459, 0.5)),
    "IN": ((4.9, 5.39, 4.53, 2.79, 3.35, 1.84, 2.53, 2.37, 2.59, 2.27, 4.06, 4.59),
           (0.458, 0.511, 0.369, 0.378, 0.356, 0.362, 0.357, 0.331, 0.467, 0.467, 0.387, 0.412)),
    "IA": ((5.34, 6.47, 4.89, 3.46, 3.01, 1.85, 2.69, 2.35, 2.97, 2.64, 5.18, 5.16),
           (0.368, 0.443, 0.529, 0.349, 0.347, 0.406, 0.467, 0.454, 0.478, 0.56, 0.597, 0.642)),
    "MN": ((6.14, 6.75, 5.34, 4.02, 3.07, 2.17, 2.63, 2.18, 2.71, 3.05, 5.6, 5.8),
           (0.485, 0.425, 0.404, 0.392, 0.317, 0.266, 0.296, 0.295, 0.456, 0.462, 0.661, 0.466)),
    "MO": ((4.09, 4.92, 4.38, 3.14, 2.93, 2.04, 2.41, 2.68, 2.98, 2.31, 4.39, 3.98),
           (0.469, 0.548, 0.363, 0.404, 0.401, 0.326, 0.455, 0.323, 0.562, 0.537, 0.592, 0.542)),
    "NE": ((4.22, 5.84, 4.5, 3.05, 2.79, 2.56, 2.69, 2.24, 2.92, 3.11, 4.32, 4.03),
           (0.544, 0.433, 0.558, 0.368, 0.4, 0.4, 0.448, 0.36, 0.386, 0.524, 0.631, 0.798)),
    "OH": ((4.96, 5.38, 4.21, 2.52, 3.52, 1.78, 2.34, 2.29, 2.46, 2.27, 3.7, 4.48),
           (0.401, 0.462, 0.328, 0.314, 0.37, 0.364, 0.324, 0.301, 0.426, 0.359, 0.421, 0.384)),
}


def by_day(months, day):
    return np.interp(day, [MIDDLE[-1] - 365, *MIDDLE, MIDDLE[0] + 365], [months[-1], *months, months[0]])


def own_sd(days, weights):
    """SD between years of the mean of so many days of the weighted residuals."""
    same = np.zeros((2, 2))
    for _ in range(400):
        same = A @ same @ A.T + B @ B.T
    total, later = days * weights @ same @ weights, same
    for k in range(1, days):
        later = A @ later
        total += 2 * (days - k) * weights @ later @ weights
    return np.sqrt(total) / days


def chain(m):
    dry, wet, n = AFTER_DRY[m], AFTER_WET[m], DAYS[m]
    share, rho = dry / (1 + dry - wet), wet - dry
    count = n * share * (1 - share) * (1 + rho) / (1 - rho) - 2 * share * (1 - share) * rho * (1 - rho**n) / (1 - rho) ** 2
    each = SHAPE[m] * SCALE[m]
    return share, n * share * each, np.sqrt(n * share * SHAPE[m] * SCALE[m] ** 2 + count * each**2)


def made(state, random):
    sd, cv = STATES[state]
    wet = random.random(YEARS) < chain(0)[0]
    chi = np.zeros((2, YEARS))
    rain, warm, often = np.zeros((12, YEARS)), np.zeros((12, YEARS)), np.zeros((12, YEARS))
    luck = random.standard_normal(YEARS)
    off, warmer = np.zeros((12, YEARS)), np.zeros((12, YEARS))
    extra, kept, usual = np.zeros(12), np.ones(12), [(0.0, 0.0)] * 12
    for day in range(-29, 366):
        m = int(np.searchsorted(np.cumsum(DAYS), max(day, 1)))
        if day == -29 or (day > 1 and day == 1 + sum(DAYS[:m])):
            share, mean, spread = chain(m)
            target = cv[m] ** 2 * GAUGE
            s = np.sqrt(np.log1p(max(0, (1 + target) / (1 + (spread / mean) ** 2) - 1)))
            factor = np.exp((s * random.standard_normal(YEARS) - s * s / 2) / (2 - share))
            mixed = np.array([share * t[0][m] + (1 - share) * t[1][m] for t in (HIGH_SD, LOW_SD)]) / 2
            wanted = sd[m] / 1.8 * np.sqrt(1 - WITH_RAIN[m] ** 2)
            own = own_sd(DAYS[m], mixed)
            extra[m] = np.sqrt(max(0, wanted**2 - own**2))
            kept[m] = min(1, wanted / own)
            usual[m] = mean, max(spread / mean, np.sqrt(target))
            luck = luck if m == 0 else .2 * luck + np.sqrt(.96) * random.standard_normal(YEARS)
            warmer[m] = luck
        wet = random.random(YEARS) < np.where(wet, AFTER_WET[m], np.minimum(.95, AFTER_DRY[m] * factor))
        chi = A @ chi + B @ random.standard_normal((2, YEARS))
        if day < 1:
            continue
        one, two = np.where(wet, HIGH_SD[0][m], HIGH_SD[1][m]) * chi[0], np.where(wet, LOW_SD[0][m], LOW_SD[1][m]) * chi[1]
        off[m] += (one + two) / 2 / DAYS[m]
        one = one + np.where(wet, by_day(HIGH[0], day), by_day(HIGH[1], day))
        two = two + np.where(wet, by_day(LOW[0], day), by_day(LOW[1], day))
        fell = np.where(wet, SCALE[m] * factor * random.gamma(SHAPE[m], 1, YEARS), 0)
        rain[m] += fell
        warm[m] += (one + two) / 2 / DAYS[m]
        often[m] += fell >= .25
    for m in range(12):
        wetter = (rain[m] - usual[m][0]) / usual[m][0] / usual[m][1]
        warm[m] += extra[m] * warmer[m] + sd[m] / 1.8 * WITH_RAIN[m] * wetter - (1 - kept[m]) * off[m]
    return rain, warm, often


def spread(values):
    return values.std(ddof=1) / values.mean()


def main(file, out):
    rows = [line.split(",") for line in pathlib.Path(file).read_text().split()]
    random = np.random.default_rng(3)
    worst = dict.fromkeys(("rain", "cv", "wet", "warmth", "sd"), 0.0)
    lines = ["| state | month | rain CV: wanted | Java | NumPy | warmth SD, F: wanted | Java | NumPy | wet days: Java | NumPy |",
             "|---|---|--:|--:|--:|--:|--:|--:|--:|--:|"]
    periods = []
    for state, (sd, cv) in STATES.items():
        theirs = np.array([row[1:] for row in rows if row[0] == state], float)
        rain, warm, wet = (theirs[:, k:36:3].T for k in range(3))
        rain2, warm2, wet2 = made(state, random)
        for m in range(12):
            worst["rain"] = max(worst["rain"], abs(rain[m].mean() / rain2[m].mean() - 1))
            worst["cv"] = max(worst["cv"], abs(spread(rain[m]) - spread(rain2[m])))
            worst["wet"] = max(worst["wet"], abs(wet[m].mean() - wet2[m].mean()))
            worst["warmth"] = max(worst["warmth"], abs(warm[m].mean() - warm2[m].mean()) * 1.8)
            worst["sd"] = max(worst["sd"], abs(warm[m].std() - warm2[m].std()) * 1.8)
            if state in ("IL", "IA") and 3 <= m <= 8:
                lines.append(
                    f"| {state} | {MONTHS[m]} | {cv[m] * GAUGE**.5:.2f} | {spread(rain[m]):.2f} | {spread(rain2[m]):.2f} "
                    f"| {sd[m]:.2f} | {warm[m].std() * 1.8:.2f} | {warm2[m].std() * 1.8:.2f} | {wet[m].mean():.1f} | {wet2[m].mean():.1f} |")
        if state == "IL":
            fit = theirs[:, 36]
            next_month = np.mean([np.corrcoef(warm[m], warm[m + 1])[0, 1] for m in range(11)])
            together = [np.corrcoef(warm[m], rain[m])[0, 1] for m in (4, 6)]
            periods = [
                f"- Illinois' spread, rain CV: April to September {spread(rain[3:9].sum(0)):.3f} (Champaign counted .178), June to August "
                f"{spread(rain[5:8].sum(0)):.3f} (.270), year {spread(rain.sum(0)):.3f} (.136).",
                f"- Warmth of a month and the next: r {next_month:.2f} (states 0.2); warmth and rain of May, July: {together[0]:.2f}, "
                f"{together[1]:.2f} (states -0.2 to -0.6).",
                f"- Days fit of 10 April to 20 May: {fit.mean():.1f}, SD {fit.std(ddof=1):.2f} (20 and 5.5).",
            ]
    lines.append("")
    lines.append(
        f"- Java and NumPy, {YEARS} years each, seven states: mean rain within {100 * worst['rain']:.1f} %, CV within {worst['cv']:.3f}, "
        f"wet days within {worst['wet']:.2f}, mean warmth within {worst['warmth']:.2f} F, SD within {worst['sd']:.2f} F.")
    lines.extend(periods)
    pathlib.Path(out).write_text("\n".join(lines) + "\n")
    same = worst["rain"] < .06 and worst["cv"] < .06 and worst["wet"] < .4 and worst["warmth"] < .5 and worst["sd"] < .35
    sys.exit(0 if same else 1)


main(*sys.argv[1:3])
