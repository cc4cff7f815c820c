"""The NumPy side of the duel: checks that its margins agree with the kernel's, then runs a timed round for every line in.

Arguments: folder with model.json, columns.f8 and margins.f8; number of draws; weighings of the field in a round.
Says first the largest difference [$/ac], its block length, how many times as long whole columns take, and its version;
then for each round the nanoseconds of the wall clock and of this thread's processor time.
"""

import json
import pathlib
import sys
import time

import numpy as np

import margins

BLOCKS = (2048, 8192, 32768)


def main(folder, draws, repeats):
    model = json.loads((folder / "model.json").read_text(encoding="utf-8"))
    columns = np.fromfile(folder / "columns.f8", "<f8").reshape(-1, draws)
    expected = np.fromfile(folder / "margins.f8", "<f8").reshape(-1, draws)
    found = np.empty_like(expected)
    blocks = sorted({min(block, draws) for block in (*BLOCKS, draws)})

    def round_ns(block):
        wall = time.perf_counter_ns()
        processor = time.thread_time_ns()
        for _ in range(repeats):
            margins.field(model, columns, found, block)
        return time.perf_counter_ns() - wall, time.thread_time_ns() - processor

    difference = 0.0
    for block in blocks:
        found.fill(np.nan)
        margins.field(model, columns, found, block)
        difference = np.maximum(difference, np.max(np.abs(found - expected)))
    # The block that suits NumPy best, by its own processor time.
    quickest = {block: min(round_ns(block)[1] for _ in range(5)) for block in blocks}
    best = min(blocks, key=quickest.get)
    print(difference, best, quickest[draws] / quickest[best], np.__version__, flush=True)
    for _ in sys.stdin:
        print(*round_ns(best), flush=True)


main(pathlib.Path(sys.argv[1]), int(sys.argv[2]), int(sys.argv[3]))
