"""A trait of moderate dose with a 20 % block refuge on continuous corn, by a second hand: one gene, adults of which a share mates
anywhere in the field, eggs over the whole field. The laws are those of advice/years/Assumption.java. Prints the chance that the
trait spares less than half of the injury by a season.

Held against: Gassmann et al. 2011, PLoS ONE 6:e22629 (first fields with severe injury to Cry3Bb1 corn, 2009, the trait sold from
2003, grown there at least three years in a row).
"""

import numpy as np

RNG = np.random.default_rng(1)
DRAWS = 100_000


def pert(low, likely, high):
    a = 1 + 4 * (likely - low) / (high - low)
    b = 1 + 4 * (high - likely) / (high - low)
    return low + (high - low) * RNG.beta(a, b, DRAWS)


def mated(stock):
    grown = stock.sum(0)
    p = (stock[2] + stock[1] / 2) / grown
    return np.stack([(1 - p) ** 2, 2 * p * (1 - p), p**2]) * grown


def chances(control, refuge, gene, dominance, generations, seasons=20):
    p = 10 ** pert(*gene)
    h = pert(*dominance)
    mixing = pert(0.2, 0.8, 1)
    cost = pert(0, 0.05, 0.5)
    part = pert(0, 0.1, 0.5)
    eggs = np.stack([(1 - p) ** 2, 2 * p * (1 - p), p**2])
    plain = np.stack([np.ones(DRAWS), 1 - cost * part, 1 - cost])
    alive = 1 - control
    trait = np.stack([np.full(DRAWS, alive), alive + h * (1 - alive), np.ones(DRAWS)]) * plain
    failed = np.full(DRAWS, seasons + 1)
    for season in range(seasons):
        holds = 1 - (eggs[2] + h * eggs[1])
        failed = np.where((control * holds < 0.5) & (failed > seasons), season + 1, failed)
        for _ in range(generations):
            own, other = refuge * eggs * plain, (1 - refuge) * eggs * trait
            eggs = mated((1 - mixing) * own) + mated((1 - mixing) * other) + mated(mixing * (own + other))
            eggs = eggs / eggs.sum(0)
    return {year: round(float((failed <= year).mean()), 3) for year in (3, 5, 7, 10, 15, 20)}


ROOTWORM = dict(gene=(-4, -2, -1), dominance=(0.05, 0.4, 1), generations=1)
BORER = dict(gene=(-6, -4, -3), dominance=(0, 0.02, 0.3), generations=2)
print("rootworm, 90 % control, 20 % block", chances(0.9, 0.2, **ROOTWORM))
print("rootworm, 90 % control,  5 % block", chances(0.9, 0.05, **ROOTWORM))
print("borer,    99 % control, 20 % block", chances(0.99, 0.2, **BORER))
