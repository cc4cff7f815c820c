"""One weed with two resistance genes over 20 years, written in NumPy apart from the engine, to hold the engine to.

Genotypes are a 3 by 3 table (copies of the first and of the second gene), gametes a 2 by 2 table. Prints one line a year:
seed per square metre, frequency of each gene, plants per square metre. The numbers stand in the engine's test WeedBankTest.

    python3 bench/numpy/years.py
"""

import numpy as np

YEARS = 20
GERMINATION, MORTALITY, WINTER, KEPT, SELFING = 0.2, 0.3, 0.1, 0.5, 0.25
CROWDING, SEEDS_ALONE = 0.05, 400.0
START, FREQUENCY = 800.0, np.array([1e-4, 1e-3])
ONE_COPY = np.array([300.0, 4.0])
TWO_COPIES = np.array([9e4, 1e3])
COST, COST_DOMINANCE = np.array([0.1, 0.25]), np.array([0.5, 0.0])
MUTATION, OUTSIDE = np.array([1e-6, 1e-5]), np.array([0.0, 0.02])
POLLEN_IN, SEEDS_IN = 0.03, 0.4
# Plants left of a seedling by biotype [resists first][resists second]; two programs in turn.
LEFT = [np.array([[0.004, 0.08], [0.05, 0.9]]), np.array([[0.05, 0.05], [0.9, 0.9]])]

HALF = np.array([[1.0, 0.0], [0.5, 0.5], [0.0, 1.0]])  # gametes of 0, 1 and 2 copies


def law(p, inbreeding):
    return np.array([
        (1 - p) ** 2 * (1 - inbreeding) + (1 - p) * inbreeding,
        2 * p * (1 - p) * (1 - inbreeding),
        p * p * (1 - inbreeding) + p * inbreeding,
    ])


def mutated(gametes):
    m1 = np.array([[1 - MUTATION[0], MUTATION[0]], [0, 1]])
    m2 = np.array([[1 - MUTATION[1], MUTATION[1]], [0, 1]])
    return m1.T @ gametes @ m2


def zygotes(eggs, pollen):
    table = np.zeros((3, 3))
    for a, b, c, d in np.ndindex(2, 2, 2, 2):
        table[a + c, b + d] += eggs[a, b] * pollen[c, d]
    return table


def shown(control, fold):
    odds = control / (1 - control)
    return (fold - 1) / (fold + odds)


inbreeding = SELFING / (2 - SELFING)
bank = START * np.outer(law(FREQUENCY[0], inbreeding), law(FREQUENCY[1], inbreeding))
outside = np.outer(law(OUTSIDE[0], inbreeding), law(OUTSIDE[1], inbreeding))
outside_gametes = HALF.T @ outside @ HALF
kept = np.outer(
    [1, 1 - COST[0] * COST_DOMINANCE[0], 1 - COST[0]], [1, 1 - COST[1] * COST_DOMINANCE[1], 1 - COST[1]]
)

for year in range(1, YEARS + 1):
    left = LEFT[(year - 1) % 2]
    controls = [1 - left[0, 0] / left[1, 0], 1 - left[0, 0] / left[0, 1]]
    e = [
        np.array([0, shown(controls[i], ONE_COPY[i]), shown(controls[i], TWO_COPIES[i])]) for i in range(2)
    ]
    survive = np.zeros((3, 3))
    for i, j in np.ndindex(3, 3):
        first = np.array([1 - e[0][i], e[0][i]])
        second = np.array([1 - e[1][j], e[1][j]])
        survive[i, j] = first @ left @ second
    spring = bank * (1 - WINTER)
    up = spring * GERMINATION
    plants = up * survive
    seeds = plants * SEEDS_ALONE * kept / (1 + CROWDING * plants.sum())
    eggs = HALF.T @ seeds @ HALF
    pollen = mutated(eggs) / seeds.sum()
    pollen = (1 - POLLEN_IN) * pollen + POLLEN_IN * outside_gametes
    new = zygotes((1 - SELFING) * mutated(eggs), pollen)
    for i, j in np.ndindex(3, 3):
        own = mutated(np.outer(HALF[i], HALF[j]))
        new += SELFING * seeds[i, j] * zygotes(own, own)
    bank = (spring - up) * (1 - MORTALITY) + KEPT * new + SEEDS_IN * outside
    total = bank.sum()
    p1 = (bank.sum(axis=1) @ [0, 0.5, 1]) / total
    p2 = (bank.sum(axis=0) @ [0, 0.5, 1]) / total
    print(f"{year} {total:.10g} {p1:.10g} {p2:.10g} {plants.sum():.10g}")
