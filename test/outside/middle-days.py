"""Proves the best plan of the days in reference/middle-days.json by another solver and writes its answers there.

Solver: HiGHS, by scipy.optimize.milp (scipy 1.17.1). Run once: python3 test/outside/middle-days.py
Each day is a mixed-integer program of its own: a moment for each task, a binary for each two holds of hands or oven that
may meet, big-M from the bounds of both. Asked in turn: is there a plan with all waits within a quarter of their tolerance
and the least spread (quarters of tolerance), one quarter less being impossible; then the shortest day within both.
"""

import json
import math
import pathlib
import time

import numpy as np
from scipy.optimize import Bounds, LinearConstraint, milp
from scipy.sparse import coo_matrix

path = pathlib.Path(__file__).parent / "reference" / "middle-days.json"


def solve(day, rung, spread, horizon, minimise, seconds):
    tasks = [t["id"] for t in day["tasks"]]
    active = {t["id"]: t["activeSeconds"] for t in day["tasks"]}
    at = {name: i for i, name in enumerate(tasks)}
    n = len(tasks)
    demands = []  # x[to] - x[from] >= c
    for w in day["waits"]:
        early = min(w["seconds"], w["earlySeconds"] * rung // 4)
        late = w["lateSeconds"] * rung // 4
        a, b = at[w["from"]], at[w["to"]]
        demands.append((a, b, active[w["from"]] + w["seconds"] - early))
        demands.append((b, a, -(active[w["from"]] + w["seconds"] + late)))
    for o in day["orders"]:
        demands.append((at[o["from"]], at[o["to"]], active[o["from"]] + o["seconds"]))
    paths = np.full((n, n), -np.inf)
    np.fill_diagonal(paths, 0)
    for a, b, c in demands:
        paths[a, b] = max(paths[a, b], c)
    for k in range(n):
        paths = np.maximum(paths, paths[:, [k]] + paths[[k], :])
    if (np.diag(paths) > 0).any():
        return None
    low = np.maximum(0, paths.max(axis=0, where=np.isfinite(paths), initial=0))
    tail = np.array(
        [max(paths[i, j] + active[tasks[j]] for j in range(n) if np.isfinite(paths[i, j])) for i in range(n)]
    )
    high = horizon - tail
    if (low > high).any():
        return None
    holds = [(at[t["id"]], at[t["id"]], t["activeSeconds"]) for t in day["tasks"] if t["uses"]]
    stays = [
        (at[s["from"]], at[s["to"]], active[s["to"]] + s["afterSeconds"]) for s in day["stays"]
    ]
    either = []
    for group in (holds, stays):
        for i, one in enumerate(group):
            for other in group[i + 1 :]:
                before = (one[1], other[0], one[2])
                after = (other[1], one[0], other[2])
                if paths[before[0], before[1]] >= before[2] or paths[after[0], after[1]] >= after[2]:
                    continue
                if low[other[0]] - high[one[1]] >= one[2] or low[one[0]] - high[other[1]] >= other[2]:
                    continue
                either.append((before, after))
    m, groups = len(either), day["equal"]
    size = n + m + len(groups) + 1
    rows, cols, vals, least, most = [], [], [], [], []

    def row(entries, lo, hi):
        r = len(least)
        for c, v in entries:
            rows.append(r), cols.append(c), vals.append(v)
        least.append(lo), most.append(hi)

    for a, b, c in demands:
        row([(b, 1), (a, -1)], c, np.inf)
    for i in range(n):
        row([(size - 1, 1), (i, -1)], active[tasks[i]], np.inf)
    for k, (before, after) in enumerate(either):
        for (a, b, c), binary_first in ((before, True), (after, False)):
            big = c - (low[b] - high[a])
            # binary 1: the first comes before the second
            if binary_first:
                row([(b, 1), (a, -1), (n + k, -big)], c - big, np.inf)
            else:
                row([(b, 1), (a, -1), (n + k, big)], c, np.inf)
    for g, group in enumerate(groups):
        width = math.floor(group["toleranceSeconds"] * spread / 4)
        for span in group["spans"]:
            a, b = at[span["from"]], at[span["to"]]
            less = active[span["from"]] if span.get("fromEnd") else 0
            row([(b, 1), (a, -1), (n + m + g, -1)], less, less + width)
    lower = np.concatenate([low, np.zeros(m), np.full(len(groups), -np.inf), [0]])
    upper = np.concatenate([high, np.ones(m), np.full(len(groups), np.inf), [horizon]])
    cost = np.zeros(size)
    cost[-1] = 1 if minimise else 0
    found = milp(
        cost,
        integrality=np.concatenate([np.zeros(n), np.ones(m), np.zeros(len(groups) + 1)]),
        bounds=Bounds(lower, upper),
        constraints=LinearConstraint(
            coo_matrix((vals, (rows, cols)), shape=(len(least), size)), least, most
        ),
        options={"time_limit": seconds, "mip_rel_gap": 0},
    )
    if found.status == 2:
        return None
    if found.status != 0:
        raise SystemExit(f"no answer within {seconds} s")
    return round(found.fun)


if __name__ == "__main__":
    days = json.loads(path.read_text())
    for each in days:
        day, began = each["day"], time.time()
        total = sum(t["activeSeconds"] for t in day["tasks"])
        line = sum(w["seconds"] + w["lateSeconds"] for w in day["waits"]) / len(day["stays"])
        horizon = math.ceil(total + line)
        spread = next(e for e in range(1, 9) if solve(day, 1, e, horizon, False, 20) is not None)
        span = solve(day, 1, spread, horizon, True, 20)
        each["proved"] = {"rung": 1, "spreadRung": spread, "spanSeconds": span}
        print(each["name"], each["proved"], f"{time.time() - began:.1f} s", flush=True)
    path.write_text(json.dumps(days, separators=(",", ":")) + "\n")
