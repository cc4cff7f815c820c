"""Margin of every program of a field, draw by draw: the formula of the weighing kernel, in NumPy.

    margin = (price·share − handling)·yield − cost          (cost at the operator's shares)
    yield  = Σ lots w·{ attainable·plants·stand·Π insects(1 − loss)·(1 − Lweed)·Π(1 − Linjury)·(1 − Ldelay) + gain − lag·years }

Whole columns at once, and in place wherever a column is of no further use. Read beside Kernel.java, which explains the
terms; this file only has to be as quick as NumPy can be and to agree.
"""

import numpy as np


def left(cuts, columns):
    """The share that all passes together leave, Π(1 − cut); None where there is no pass."""
    rest = None
    for cut in cuts:
        through = 1 - cut["terms"][0]["weight"] * columns[cut["terms"][0]["control"]]
        for term in cut["terms"][1:]:
            through -= term["weight"] * columns[term["control"]]
        np.maximum(through, 0, out=through)
        rest = through if rest is None else np.multiply(rest, through, out=rest)
    return rest


def keep_from_weeds(weeds, columns, common):
    """common · (1 − hyperbola of the load)."""
    load = None
    most = 0.0
    for weed in weeds:
        one = columns[weed["loss"]] * columns[weed["density"]]
        rest = left(weed["cuts"], columns)
        if rest is not None:
            one *= rest
        load = one if load is None else np.add(load, one, out=load)
        most = max(most, weed["mostLossPct"])
    # most·load / (most + load) is the same hyperbola with one division; the load is finite here.
    lost = most * load
    load += most
    lost /= load
    lost *= 0.01
    np.subtract(1, lost, out=lost)
    common *= lost


def untreated(insect, columns):
    """What an insect would cost bare plants if nothing were done, as a share of yield: the same for every program."""
    lost = np.minimum(columns[insect["pressure"]], float(insect["cap"]))
    lost *= columns[insect["loss"]]
    lost *= 0.01
    return lost


def hit(insect, press, columns):
    """What an insect would cost plants without a trait, as a share of yield."""
    rest = left(insect["cuts"], columns)
    return press if rest is None else np.multiply(rest, press, out=rest)


def through_traits(modes, columns):
    """The share of injury that the trait groups let through, Π(1 − mode)."""
    through = None
    for mode in modes:
        control = columns[mode["control"]]
        if mode["works"] < 0:
            one = 1 - control
        else:
            one = control - mode["ifFailed"]
            one *= columns[mode["works"]]
            one += mode["ifFailed"]
            np.subtract(1, one, out=one)
        through = one if through is None else np.multiply(through, one, out=through)
    return through


# Seeds that crowd one another out: share lost with each 1000 seeds, about so many, from, to [1000/ac].
CROWDING = {"CORN": (0.0, 32.0, 32.0, 32.0), "SOYBEAN": (0.00172, 140.0, 100.0, 160.0), "WHEAT": (0.00046, 1000.0, 200.0, 1000.0)}


def plants_keep(stand, columns):
    """Share of the yield that a lot's final stand keeps [%]: seeds, germination and emergence, then the crop's response."""
    crop = stand["crop"]
    if stand["counted"] < 0:
        slope, usual, fewest, most = CROWDING[crop]
        crowded = slope * (min(max(stand["seedsThousand"], fewest), most) - usual)
        share = np.clip(columns[stand["emergence"]] / 100 - crowded, 0, 1)
        plants = stand["seedsThousand"] * stand["germination"] * share
    else:
        plants = columns[stand["counted"]] / 1000
    best = columns[stand["best"]]
    if crop == "CORN":
        best = best / 1000
        read = np.clip(plants, 10, 1.25 * best)
        kept = 100 - columns[stand["sharpness"]] * 0.07737 * (30.33 * (read - best) / best) ** 2
        kept = np.maximum(kept, 0) * np.minimum(plants / 10, 1)
        if stand["late"] >= 0:
            kept = np.maximum(kept - columns[stand["late"]] * stand["dateLossPct"], 0)
    elif crop == "SOYBEAN":
        kept = 100 * (1 - 50.0 ** (-plants / (best / 1000)))
        if stand["late"] >= 0:
            kept = np.maximum(kept * (1 - columns[stand["late"]] * stand["dateLossPct"] / 100), 0)
    else:
        on_a_foot = plants / 43.56
        strict = np.interp(on_a_foot, [0, 13, 16.5, 19.5, 22], [0, 65, 77.5, 92.5, 100])
        kept = best * strict + (1 - best) * 100 * (1 - np.exp(-0.201 * on_a_foot))
    return kept if stand["gaps"] < 0 else np.maximum(kept - columns[stand["gaps"]], 0)


def lot_yield(lot, kept, insects, hits, lag, columns, common):
    """Yield of one seed lot [bu/ac], times its share of the acres."""
    grown = columns[lot["stand"]] * 0.0001
    grown *= kept[key(lot["plants"])]
    grown *= common
    for insect, bare_hit, modes in zip(insects, hits, lot["modes"]):
        if modes:
            bare = lot["unprotected"]
            lost = through_traits(modes, columns)
            lost *= 1 - bare
            lost += bare * (1 - insect["neighbourShare"])
            lost *= bare_hit
            np.minimum(lost, 1, out=lost)
        else:
            lost = np.minimum(bare_hit, 1)
        np.subtract(1, lost, out=lost)
        grown *= lost
    grown += columns[lot["gain"]]
    if lot["yearsBehind"] != 0:
        grown -= lot["yearsBehind"] * lag
    if lot["share"] != 1:
        grown *= lot["share"]
    return grown


def key(stand):
    return tuple(sorted(stand.items()))


def program(model, program_model, columns, kept, presses, margins):
    """Fills in the margin [$/ac] of one program."""
    common = columns[model["yield"]].copy()
    if program_model["weeds"]:
        keep_from_weeds(program_model["weeds"], columns, common)
    for injury in program_model["injuries"]:
        lost = -injury["share"] / 100 * columns[injury["loss"]]
        lost += 1
        common *= lost
    if program_model["delayDays"] > 0:
        lost = program_model["delayDays"] / 100 * columns[model["delayLoss"]]
        np.minimum(lost, 1, out=lost)
        np.subtract(1, lost, out=lost)
        common *= lost
    insects = program_model["insects"]
    hits = [hit(insect, press, columns) for insect, press in zip(insects, presses)]
    lag = columns[model["geneticLag"]]
    lots = program_model["lots"]
    total = lot_yield(lots[0], kept, insects, hits, lag, columns, common)
    for lot in lots[1:]:
        total += lot_yield(lot, kept, insects, hits, lag, columns, common)
    np.maximum(total, 0, out=total)
    farm = model["farm"]
    np.multiply(columns[model["price"]], farm["cropShare"], out=margins)
    shares = farm["shares"]
    margins -= columns[model["handling"]] * (1 if shares["hauling"] is None else shares["hauling"])
    if model["drying"] >= 0:
        margins -= columns[model["drying"]] * (farm["cropShare"] if shares["drying"] is None else shares["drying"])
    margins *= total
    margins -= program_model["costUsdPerAcre"]


def field(model, columns, margins, block):
    """Every program, in blocks of so many draws: whole columns where the block is as long as they are."""
    draws = columns.shape[1]
    for start in range(0, draws, block):
        part = columns[:, start : start + block]
        presses = [untreated(insect, part) for insect in model["programs"][0]["insects"]]
        stands = {key(lot["plants"]): lot["plants"] for one in model["programs"] for lot in one["lots"]}
        kept = {name: plants_keep(stand, part) for name, stand in stands.items()}
        for place, program_model in enumerate(model["programs"]):
            program(model, program_model, part, kept, presses, margins[place, start : start + block])
