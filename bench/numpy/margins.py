"""Margin of every course of a field, draw by draw: the formula of the weighing kernel, in NumPy.

    margin = (price·share − handling)·yield − cost·costShare
    yield  = Σ lots w·{ attainable·stand·Π insects(1 − loss)·(1 − Lweed)·Π(1 − Linjury)·(1 − Ldelay) + gain − lag·years }

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
        one = weed["firstPlantLossPct"] * columns[weed["density"]]
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
    """What an insect would cost bare plants if nothing were done, as a share of yield: the same for every course."""
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


def lot_yield(lot, insects, hits, lag, columns, common):
    """Yield of one seed lot [bu/ac], times its share of the acres."""
    grown = columns[lot["stand"]] * 0.01
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


def course(model, course_model, columns, presses, margins):
    """Fills in the margin [$/ac] of one course."""
    common = columns[model["yield"]].copy()
    if course_model["weeds"]:
        keep_from_weeds(course_model["weeds"], columns, common)
    for injury in course_model["injuries"]:
        lost = -injury["share"] / 100 * columns[injury["loss"]]
        lost += 1
        common *= lost
    if course_model["delayDays"] > 0:
        lost = course_model["delayDays"] / 100 * columns[model["delayLoss"]]
        np.minimum(lost, 1, out=lost)
        np.subtract(1, lost, out=lost)
        common *= lost
    insects = course_model["insects"]
    hits = [hit(insect, press, columns) for insect, press in zip(insects, presses)]
    lag = columns[model["geneticLag"]]
    lots = course_model["lots"]
    total = lot_yield(lots[0], insects, hits, lag, columns, common)
    for lot in lots[1:]:
        total += lot_yield(lot, insects, hits, lag, columns, common)
    np.maximum(total, 0, out=total)
    farm = model["farm"]
    np.multiply(columns[model["price"]], farm["cropShare"], out=margins)
    margins -= columns[model["handling"]]
    margins *= total
    margins -= course_model["costUsdPerAcre"] * farm["costShare"]


def field(model, columns, margins, block):
    """Every course, in blocks of so many draws: whole columns where the block is as long as they are."""
    draws = columns.shape[1]
    for start in range(0, draws, block):
        part = columns[:, start : start + block]
        presses = [untreated(insect, part) for insect in model["courses"][0]["insects"]]
        for place, course_model in enumerate(model["courses"]):
            course(model, course_model, part, presses, margins[place, start : start + block])
