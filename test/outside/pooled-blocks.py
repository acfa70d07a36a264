"""Reference values of the pooled block model, by dense least squares in numpy and F tails in scipy.

R was not to be had where these were made; in R they are
  pooled <- lm(y ~ factor(block) + factor(level)); anova(lm(y ~ factor(block)), pooled)
  apart  <- lm(y ~ factor(block) + factor(trial):factor(level)); anova(pooled, apart)
  summary(lm(y ~ factor(block) + x)), summary(lm(y ~ factor(block) + x + I(x^2)))
Run: python3 test/outside/pooled-blocks.py > test/outside/reference/pooled-blocks.json
"""

import json

import numpy as np
from scipy import stats

# Invented unit means of three trials of one bake club: (trial, session, level value, mean liking).
ROWS = [
    (0, 0, 62, 5.4), (0, 0, 66, 6.1), (0, 0, 70, 6.6), (0, 0, 74, 6.2),
    (0, 1, 62, 5.0), (0, 1, 66, 6.2), (0, 1, 70, 6.3), (0, 1, 74, 6.4),
    (0, 2, 62, 5.7), (0, 2, 66, 6.0), (0, 2, 70, 7.0), (0, 2, 74, 6.1),
    (1, 0, 66, 5.2), (1, 0, 70, 6.1), (1, 0, 74, 5.6), (1, 0, 78, 5.1),
    (1, 1, 66, 5.5), (1, 1, 70, 5.9), (1, 1, 74, 6.1), (1, 1, 78, 4.8),
    (2, 0, 62, 6.0), (2, 0, 70, 7.2), (2, 0, 78, 6.3),
]


def columns(codes):
    known = sorted(set(codes))
    return np.array([[1.0 if code == one else 0.0 for one in known] for code in codes])


def rss(design, y):
    beta, _, rank, _ = np.linalg.lstsq(design, y, rcond=None)
    left = y - design @ beta
    return float(left @ left), int(len(y) - rank), beta, rank


y = np.array([row[3] for row in ROWS])
x = np.array([float(row[2]) for row in ROWS])
block = columns([(row[0], row[1]) for row in ROWS])
level = columns([row[2] for row in ROWS])
own = columns([(row[0], row[2]) for row in ROWS])

rss0, df0, _, _ = rss(block, y)
rss1, df1, _, _ = rss(np.hstack([block, level]), y)
rss2, df2, _, _ = rss(np.hstack([block, own]), y)
f = ((rss0 - rss1) / (df0 - df1)) / (rss1 / df1)
het = ((rss1 - rss2) / (df1 - df2)) / (rss2 / df2)


def slope(powers):
    centred = x - 70.0
    design = np.hstack([block] + [(centred**p)[:, None] for p in powers])
    left, df, beta, _ = rss(design, y)
    covariance = np.linalg.inv(design.T @ design) * left / df
    return beta[block.shape[1]:], covariance[block.shape[1]:, block.shape[1]:], df


line, line_cov, line_df = slope([1])
curve, curve_cov, curve_df = slope([1, 2])
half = stats.t.ppf(0.975, line_df) * np.sqrt(line_cov[0, 0])

print(json.dumps({
    "made": "numpy %s, scipy %s" % (np.__version__, stats.__name__ and __import__("scipy").__version__),
    "rows": ROWS,
    "levels": {"f": f, "df1": df0 - df1, "df2": df1, "p": float(stats.f.sf(f, df0 - df1, df1))},
    "heterogeneity": {"f": het, "df1": df1 - df2, "df2": df2, "p": float(stats.f.sf(het, df1 - df2, df2))},
    "slope": {"slope": float(line[0]), "se": float(np.sqrt(line_cov[0, 0])), "df": line_df,
              "low": float(line[0] - half), "high": float(line[0] + half)},
    "vertex": float(70.0 - curve[0] / (2 * curve[1])),
}, indent=2))
