"""High-precision values for the studentized range, noncentral t and noncentral F at points of distributions.json.

Usage: python3 settle-by-mpmath.py range|quantile|t|f   (mpmath, scipy; needs some minutes)
Studentized range: nested quadrature of the definition. Noncentral t: quadrature over the estimated spread.
Noncentral F: Poisson mixture of incomplete betas. Only tails above 1e-40 are listed.
"""
import json
import sys
import mpmath as mp

mp.mp.dps = 30
ref = json.load(open("distributions.json"))


def ncdf(x):
    return mp.erfc(-x / mp.sqrt(2)) / 2


GRID = [mp.mpf(i) / 5 for i in range(-60, 301)]
DENS = [mp.npdf(z) for z in GRID]
SHARE = [ncdf(z) for z in GRID]


def range_upper(w, k):
    total = mp.mpf(0)
    for z, d, a in zip(GRID, DENS, SHARE):
        if d < mp.mpf(10) ** -120 and z > w / 2 + 14:
            break
        b = ncdf(z - w)
        total += d * (a ** (k - 1) - (a - b) ** (k - 1))
    return k * total / 5


def over_scale(df, value, curvature, sharp=0):
    half = mp.mpf(df) / 2
    const = mp.log(2) + half * mp.log(half) - mp.loggamma(half)
    peak = -mp.log(1 + 2 * curvature / df) / 2
    step = min(mp.mpf("0.09"), mp.mpf("0.33") / mp.sqrt(2 * df + sharp))

    def term(v):
        return mp.exp(const + df * v - half * mp.exp(2 * v)) * value(mp.exp(v))

    total = mp.mpf(0)
    for direction in (1, -1):
        i = 0 if direction == 1 else -1
        before = mp.mpf(0)
        while True:
            t = term(peak + i * step)
            total += t
            if t < total * mp.mpf(10) ** -20 and t <= before:
                break
            before = t
            i += direction
    return total * step


def sr_upper(q, k, df):
    q = mp.mpf(q)
    return over_scale(df, lambda s: range_upper(q * s, k), q * q / 4)


def sr_quantile(p, k, df):
    """Straight line in the logarithm of the tail between two points a millionth around scipy's quantile."""
    from scipy.stats import studentized_range

    start = mp.mpf(float(studentized_range.ppf(p, k, df)))
    low, high = start * (1 - mp.mpf(10) ** -6), start * (1 + mp.mpf(10) ** -6)
    miss = [mp.log(sr_upper(q, k, df) / (1 - mp.mpf(str(p)))) for q in (low, high)]
    return low + (high - low) * miss[0] / (miss[0] - miss[1])


def nct(t, df, d):
    t, d = mp.mpf(str(t)), mp.mpf(str(d))
    lower = over_scale(df, lambda s: ncdf(t * s - d), t * t / 2 if t < 0 else 0, d * d)
    upper = over_scale(df, lambda s: ncdf(d - t * s), t * t / 2 if t > 0 else 0, d * d)
    return lower, upper


def ncf(x, d1, d2, lam):
    x, half = mp.mpf(str(x)), mp.mpf(str(lam)) / 2
    y = d1 * x / (d1 * x + d2)
    lower = upper = mp.mpf(0)
    j = 0
    while j < half or mp.exp(-half) * half**j / mp.factorial(j) > mp.mpf(10) ** -60:
        w = mp.exp(-half) * half**j / mp.factorial(j)
        a, b = mp.mpf(d1) / 2 + j, mp.mpf(d2) / 2
        lower += w * mp.betainc(a, b, 0, y, regularized=True)
        upper += w * mp.betainc(a, b, y, 1, regularized=True)
        j += 1
    return lower, upper


def number(x):
    return float(mp.nstr(x, 17))


which = sys.argv[1]
rows = []
if which == "range":
    for r in ref["studentized_range_cdf"]:
        if r["df"] >= 5 and r["means"] > 2 and r["q"] >= 7:
            u = sr_upper(r["q"], r["means"], r["df"])
            if u > mp.mpf(10) ** -40:
                rows.append({"q": r["q"], "means": r["means"], "df": r["df"], "upper": number(u)})
if which == "quantile":
    mp.mp.dps = 20
    for r in ref["studentized_range_quantile"]:
        if r["df"] in (5, 9) and r["p"] >= 0.99 and r["means"] > 2:
            rows.append({"p": r["p"], "means": r["means"], "df": r["df"], "q": number(sr_quantile(r["p"], r["means"], r["df"]))})
if which == "t":
    for r in ref["noncentral_t_cdf"]:
        lower, upper = nct(r["x"], r["df"], r["ncp"])
        rows.append({"x": r["x"], "df": r["df"], "ncp": r["ncp"], "lower": number(lower), "upper": number(upper)})
if which == "f":
    mp.mp.dps = 70  # upper tails are differences
    for r in ref["noncentral_F_cdf"]:
        lower, upper = ncf(r["x"], r["df1"], r["df2"], r["ncp"])
        rows.append({"x": r["x"], "df1": r["df1"], "df2": r["df2"], "ncp": r["ncp"], "lower": number(lower), "upper": number(upper)})
print(json.dumps(rows))
