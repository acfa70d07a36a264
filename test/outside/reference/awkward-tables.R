# Findings of the tables in awkward/ as R sees them; writes awkward-tables.json beside this file.
# Rscript awkward-tables.R, with R 4.2.2, emmeans 1.8.4-1, mvtnorm, jsonlite.
suppressMessages({library(emmeans); library(jsonlite); library(mvtnorm)})

tables <- fromJSON("awkward-tables-asked.json", simplifyVector = FALSE)

# Chance that the studentized range of k means exceeds q: its definition, integrated twice (ptukey errs at few df).
range_upper <- function(q, k, df) {
  if (k == 2) return(2 * pt(-q / sqrt(2), df))
  of_normals <- function(w) k * integrate(function(z) {
    a <- pnorm(z); b <- pnorm(z - w); (a^(k - 1) - (a - b)^(k - 1)) * dnorm(z)
  }, -9, w + 9, rel.tol = 1e-11, subdivisions = 2000)$value
  at <- function(v) sapply(v, function(v) {
    s <- exp(v)
    exp(log(2) + df / 2 * log(df / 2) - lgamma(df / 2) + df * v - df * s^2 / 2) * of_normals(q * s)
  })
  width <- 12 / sqrt(2 * df)
  integrate(at, -min(14, 4 * width), min(1.8, width), rel.tol = 1e-10, subdivisions = 5000)$value
}
range_factor <- function(upper, k, df) {
  if (k == 2) return(sqrt(2) * qt(1 - upper / 2, df))
  start <- qtukey(1 - upper, k, df)
  uniroot(function(q) range_upper(q, k, df) - upper, start * c(0.98, 1.02), tol = 1e-11)$root
}

# Chance that the largest of n t values of one correlation r exceeds t by size: integrated twice as well, since pmvt is off by
# up to 5e-5 at few df (at 6 df, three comparisons and t = 10.3 it gives 1.7e-5 where the definition gives 6.3e-5).
largest_upper <- function(t, n, r, df) {
  of_normals <- function(w) integrate(function(z) {
    tail <- pnorm((-w - sqrt(r) * z) / sqrt(1 - r)) + pnorm((-w + sqrt(r) * z) / sqrt(1 - r))
    -expm1(n * log1p(-tail)) * dnorm(z)
  }, -Inf, Inf, rel.tol = 1e-11, subdivisions = 2000)$value
  at <- function(v) sapply(v, function(v) {
    s <- exp(v)
    exp(log(2) + df / 2 * log(df / 2) - lgamma(df / 2) + df * v - df * s^2 / 2) * of_normals(abs(t) * s)
  })
  width <- 12 / sqrt(2 * df)
  integrate(at, -min(14, 4 * width), min(1.8, width), rel.tol = 1e-10, subdivisions = 5000)$value
}

limits <- function(estimate, se, factor) list(low = estimate - factor * se, high = estimate + factor * se)
means_of <- function(grid) {
  each <- as.data.frame(grid)
  lapply(seq_len(nrow(each)), function(i) list(estimate = each$emmean[i], se = each$SE[i], low = each$lower.CL[i], high = each$upper.CL[i]))
}

# d: y, blk, lf (level as factor), L (level as number)
rung <- function(d, control, ordered) {
  d$blk <- factor(d$blk); d$lf <- droplevels(d$lf)
  blocks <- if (nlevels(d$blk) > 1) "blk +" else ""
  model <- function(rest) lm(as.formula(paste("y ~", blocks, rest)), d)
  fit <- model("lf"); df <- df.residual(fit); k <- nlevels(d$lf)
  type2 <- drop1(fit, ~ ., test = "F")
  grid <- emmeans(fit, "lf", weights = "equal"); V <- vcov(grid); est <- as.data.frame(grid)$emmean
  compare <- function(a, b) list(difference = est[b] - est[a], se = sqrt(V[a, a] + V[b, b] - 2 * V[a, b]))
  factor95 <- range_factor(0.05, k, df) / sqrt(2)
  out <- list(
    f = type2["lf", "F value"], df1 = k - 1, df2 = df, p = type2["lf", "Pr(>F)"],
    residualSd = summary(fit)$sigma, means = means_of(grid),
    pairs = apply(combn(k, 2), 2, function(ab) {
      one <- compare(ab[1], ab[2])
      c(one, limits(one$difference, one$se, factor95), p = range_upper(sqrt(2) * abs(one$difference) / one$se, k, df))
    }, simplify = FALSE)
  )
  if (!is.null(control)) {
    at <- match(as.character(control), levels(d$lf)); others <- setdiff(seq_len(k), at)
    K <- diag(k)[others, , drop = FALSE]; K[, at] <- -1
    R <- cov2cor(K %*% V %*% t(K)); n <- length(others)
    beyond <- function(t) {
      if (n == 1) return(2 * pt(-abs(t), df))
      r <- R[lower.tri(R)]
      if (max(r) - min(r) < 1e-9) return(largest_upper(t, n, mean(r), df))
      set.seed(1)
      1 - pmvt(rep(-abs(t), n), rep(abs(t), n), df = df, corr = R, algorithm = GenzBretz(maxpts = 2e5, abseps = 1e-6))[1]
    }
    reach <- if (n == 1) qt(0.975, df) else uniroot(function(t) beyond(t) - 0.05, c(1, 40), tol = 1e-6)$root
    out$againstControl <- lapply(others, function(b) {
      one <- compare(at, b)
      c(one, limits(one$difference, one$se, reach), p = beyond(one$difference / one$se))
    })
  }
  if (ordered) {
    middle <- (max(d$L) + min(d$L)) / 2; half <- (max(d$L) - min(d$L)) / 2; d$x <- (d$L - middle) / half
    line <- model("x"); slope <- summary(line)$coefficients["x", ]; ci <- confint(line)["x", ] / half
    out$trend <- list(slope = slope[[1]] / half, se = slope[[2]] / half, low = ci[[1]], high = ci[[2]], p = slope[[4]])
    if (k >= 3) out$best <- best_of(model("x + I(x^2)"), fit, middle, half, k)
  }
  out
}

best_of <- function(curve, fit, middle, half, k) {
  b <- coef(curve)[["x"]]; c <- coef(curve)[["I(x^2)"]]; C <- vcov(curve)[c("x", "I(x^2)"), c("x", "I(x^2)")]
  t <- qt(0.975, df.residual(curve)); turn <- -b / (2 * c)
  gradient <- c(-1 / (2 * c), b / (2 * c^2)); se <- sqrt(drop(t(gradient) %*% C %*% gradient))
  A <- 4 * (c^2 - t^2 * C[2, 2]); B <- 4 * (b * c - t^2 * C[1, 2]); C0 <- b^2 - t^2 * C[1, 1]; D <- B^2 - 4 * A * C0
  ends <- if (A < 0 && D <= 0) NULL else middle + half * sort((-B + c(-1, 1) * sqrt(D)) / (2 * A))
  out <- list(
    linear = b / half - 2 * c * middle / half^2, quadratic = c / half^2, vertex = middle + half * turn,
    delta = limits(middle + half * turn, half * se, t),
    fieller = c(list(kind = if (A > 0) "interval" else if (is.null(ends)) "everything" else "outside"),
                if (is.null(ends)) NULL else list(low = ends[1], high = ends[2]))
  )
  if (k > 3) {
    lack <- anova(curve, fit)
    out$lackOfFit <- list(f = lack$F[2], df1 = lack$Df[2], df2 = lack$Res.Df[2], p = lack[["Pr(>F)"]][2])
  }
  out
}

beside <- function(d, covariate) {
  d$m <- d[[covariate]]
  with <- lm(y ~ taster + m + lf, d); without <- lm(y ~ taster + lf, d)
  type2 <- drop1(with, ~ ., test = "F"); grid <- emmeans(with, "lf"); k <- nlevels(d$lf)
  unscaled <- function(fit) vcov(emmeans(fit, "lf")) / summary(fit)$sigma^2
  V <- unscaled(with); V0 <- unscaled(without)
  wider <- apply(combn(k, 2), 2, function(i) sqrt((V[i[1], i[1]] + V[i[2], i[2]] - 2 * V[i[1], i[2]]) /
                                                 (V0[i[1], i[1]] + V0[i[2], i[2]] - 2 * V0[i[1], i[2]])))
  list(slope = coef(with)[["m"]], f = type2["lf", "F value"], df1 = k - 1, df2 = df.residual(with),
       p = type2["lf", "Pr(>F)"], widening = max(wider), separable = max(wider) <= 3, means = means_of(grid))
}

# Marginal means of y ~ taster + unit, apart in each group that shares no taster with another.
unit_means <- function(d, unit, block) {
  d$unit <- factor(d[[unit]])
  if (all(is.na(d$taster))) d$taster <- "nobody"
  d$group <- as.integer(d$unit)
  repeat {
    before <- d$group
    d$group <- ave(d$group, d$taster, FUN = min); d$group <- ave(d$group, d$unit, FUN = min)
    if (identical(before, d$group)) break
  }
  do.call(rbind, lapply(split(d, d$group), function(s) {
    s$unit <- droplevels(s$unit); who <- unique(s$taster)
    mean_of <- if (length(who) > 1 && nlevels(s$unit) > 1) {
      every <- expand.grid(taster = who, unit = levels(s$unit))
      tapply(predict(lm(y ~ taster + unit, s), every), every$unit, mean)
    } else tapply(s$y, s$unit, mean)
    first <- s[match(names(mean_of), s$unit), ]
    data.frame(y = as.vector(mean_of), blk = first[[block]], lf = first$lf, L = first$L)
  }))
}

ranks_of <- function(M) {
  whole <- M[complete.cases(M), , drop = FALSE]; n <- nrow(whole); k <- ncol(whole)
  if (n == 0) return(NULL)
  found <- friedman.test(round(whole, 10)); R <- t(apply(round(whole, 10), 1, rank))
  ties <- sum(apply(R, 1, function(r) sum(table(r)^3 - table(r))))
  c(list(chiSquare = found$statistic[[1]], df = found$parameter[[1]], p = found$p.value,
         kendallW = found$statistic[[1]] / (n * (k - 1)), rankSums = unname(lapply(colSums(R), function(sum) list(sum = sum))),
         leftOut = nrow(M) - n),
    if (found$p.value < 0.05) list(leastDifference = qnorm(0.975) * sqrt((n * k * (k + 1) - ties / (k - 1)) / 6)))
}

findings_of <- function(name, asked) {
  file <- sprintf("awkward/%s.csv", name)
  d <- if (grepl(";", readLines(file, 1))) read.csv2(file) else read.csv(file)
  ordered <- is.numeric(d$level)
  d$lf <- factor(d$level, levels = sort(unique(d$level), method = "radix")); d$L <- if (ordered) d$level else NA
  if (is.null(d$flight)) d$flight <- 1
  if (is.null(d$taster)) d$taster <- NA
  d$day <- as.character(d$session); d$round <- paste(d$session, d$flight)
  d$batch <- paste(d$session, d$level); d$piece <- paste(d$round, d$level)
  lapply(intersect(c("liking", "crumb"), names(d)), function(response) {
    s <- d[!is.na(d[[response]]), ]; s$y <- s[[response]]; tasters <- unique(na.omit(s$taster))
    out <- list(name = response, n = nrow(s), levels = lapply(levels(s$lf), function(l) {
      y <- s$y[s$lf == l]
      c(list(n = length(y), mean = mean(y), sd = sd(y)), limits(mean(y), sd(y) / sqrt(length(y)), qt(0.975, length(y) - 1)), median = median(y))
    }))
    s$blk <- if (length(tasters) > 1) s$taster else 1
    out$rows <- rung(s, asked$control, ordered)
    if (!is.null(s$minutes)) out$rows$freshness <- beside(s, "minutes")
    if (!is.null(s$position)) out$rows$order <- beside(s, "position")
    if (length(tasters) > 1) {
      M <- tapply(s$y, list(s$taster, s$lf), mean); at <- which(!is.na(M), arr.ind = TRUE)
      cells <- data.frame(y = M[at], blk = rownames(M)[at[, 1]], lf = factor(colnames(M)[at[, 2]], levels = levels(s$lf)))
      cells$L <- if (ordered) as.numeric(as.character(cells$lf)) else NA
      out$pieces <- rung(cells, asked$control, ordered)
      out$ranks <- ranks_of(M)
      out$agreement <- lapply(rownames(M), function(t) {
        rest <- colMeans(M[rownames(M) != t, , drop = FALSE], na.rm = TRUE); both <- !is.na(rest) & !is.na(M[t, ])
        list(taster = t, correlation = if (sum(both) > 2) cor(M[t, both], rest[both]), sd = sd(s$y[s$taster == t]))
      })
    }
    sessions <- length(unique(s$day)); rounds <- length(unique(s$round)); by_piece <- identical(asked$unit, "piece")
    if (sessions == 1 && rounds > 1) out$doughs <- rung(unit_means(s, "piece", "round"), asked$control, ordered)
    if (by_piece && rounds > 1) out$factor <- rung(unit_means(s, "piece", "round"), asked$control, ordered)
    if (!by_piece && sessions > 1) out$factor <- rung(unit_means(s, "batch", "day"), asked$control, ordered)
    out
  })
}

answers <- Map(function(name, asked) list(asked = asked, responses = findings_of(name, asked)), names(tables), tables)
write(toJSON(answers, digits = NA, auto_unbox = TRUE, null = "null", pretty = 1), "awkward-tables.json")
