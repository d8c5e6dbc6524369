# Reference values for the statistics of the harness, by R alone (base and stats).
# Usage: Rscript statistics.R > statistics.csv
options(digits = 15, warn = 1)
out <- function(what, ..., value) {
  args <- c(...)
  args <- c(args, rep(NA, 5 - length(args)))
  cat(what, paste(ifelse(is.na(args), "", trimws(formatC(args, digits = 15, format = "g"))), collapse = ","),
      trimws(formatC(value, digits = 15, format = "g")), sep = ",")
  cat("\n")
}
cat("# Reference values for intervals, tests and tolerance factors.\n")
cat("# Source: recomputed by statistics.R beside this file,", R.version.string, "\n")
cat("# Date:", format(Sys.Date()), "\n")
cat("# Tolerance: 1e-9 relative where both sides use closed forms or library tails; 1e-6 for what R integrates\n")
cat("#   numerically (tolerance factors) or finds by optimisation (paired differences). Columns: what, arguments, value.\n")
cat("what,a,b,c,d,e,value\n")

# Clopper-Pearson and Wilson: count, n, confidence
for (case in list(c(4, 20, .95), c(50, 500, .90), c(0, 30, .95), c(30, 30, .95), c(1, 500, .95), c(499, 500, .95),
                  c(3, 1e6, .99), c(212, 500, .8))) {
  x <- case[1]; n <- case[2]; conf <- case[3]
  ci <- binom.test(x, n, conf.level = conf)$conf.int
  out("clopper-pearson low", case, value = ci[1]); out("clopper-pearson high", case, value = ci[2])
  w <- suppressWarnings(prop.test(x, n, conf.level = conf, correct = FALSE))$conf.int
  out("wilson low", case, value = w[1]); out("wilson high", case, value = w[2])
}
# Noncentral t: t, nu, delta
for (case in list(c(1.5, 9, 1), c(-2, 4, 0.5), c(10, 42, 8), c(0, 7, -1.2), c(35, 19, 30), c(2, 1, 1), c(4, 300, 3.5),
                  c(1.9, 2.5, 2), c(25, 99, 20))) {
  out("noncentral t", case, value = pt(case[1], case[2], case[3]))
}
# One-sided tolerance factor by noncentral t: n, content, confidence
for (case in list(c(43, .90, .99), c(10, .95, .95), c(5, .90, .95), c(100, .99, .90), c(30, .9973, .95))) {
  n <- case[1]
  k <- uniroot(function(t) pt(t, n - 1, qnorm(case[2]) * sqrt(n)) - case[3], c(-5, 200), tol = 1e-12)$root / sqrt(n)
  out("one-sided factor", case, value = k)
}
# Two-sided exact factor: integral over the mean's error of P(s reaches)
half <- function(x, p) uniroot(function(r) pnorm(x + r) - pnorm(x - r) - p, c(0, abs(x) + 20), tol = 1e-13)$root
exact <- function(n, p, conf) {
  f <- function(k) 2 * integrate(Vectorize(function(z) dnorm(z) *
        pchisq((n - 1) * half(z / sqrt(n), p)^2 / k^2, n - 1, lower.tail = FALSE)), 0, 8, rel.tol = 1e-10,
        subdivisions = 500)$value - conf
  uniroot(f, c(0.3, 60), tol = 1e-10)$root
}
for (case in list(c(43, .90, .99), c(10, .90, .95), c(10, .95, .95), c(10, .99, .95), c(2, .95, .95), c(5, .99, .99),
                  c(25, .95, .95), c(100, .95, .95), c(500, .95, .95), c(1000, .9973, .99))) {
  out("exact factor", case, value = exact(case[1], case[2], case[3]))
  out("howe factor", case, value = qnorm((1 + case[2]) / 2) *
        sqrt((case[1] - 1) * (1 + 1 / case[1]) / qchisq(1 - case[3], case[1] - 1)))
}
# Standard deviation: s, n, confidence; mean: mean, standard error, nu, confidence
for (case in list(c(13.97, 10, .95), c(2, 2, .95), c(1, 500, .99))) {
  nu <- case[2] - 1
  out("sigma low", case, value = case[1] * sqrt(nu / qchisq((1 + case[3]) / 2, nu)))
  out("sigma high", case, value = case[1] * sqrt(nu / qchisq((1 - case[3]) / 2, nu)))
}
out("mean high", 10, 2, 4, .95, value = 10 + 2 * qt(.975, 4))
# Ranks: n, p, confidence
for (case in list(c(100, .5, .95), c(2730, .00135, .95), c(2731, .00135, .95), c(6000, .99865, .95), c(500, .5, .99),
                  c(1000000, .00135, .95))) {
  n <- case[1]; p <- case[2]; tail <- (1 - case[3]) / 2
  lower <- 0
  while (pbinom(lower, n, p) <= tail) lower <- lower + 1     # P(B <= l - 1) <= tail, l greatest
  upper <- qbinom(tail, n, p, lower.tail = FALSE) + 1
  out("lower rank", case, value = lower); out("upper rank", case, value = upper)
}
# Wilks: sides, content, confidence
for (case in list(c(1, .95, .95), c(2, .95, .95), c(1, .99, .95), c(1, .9973, .95), c(1, .999, .95), c(2, .99, .99),
                  c(2, .9, .95))) {
  n <- 2
  while (1 - pbinom(case[1] - 1, n, 1 - case[2]) < case[3]) n <- n + 1
  out("least sample", case, value = n)
}
# McNemar: b, c
for (case in list(c(0, 0), c(1, 5), c(10, 2), c(30, 18), c(400, 330), c(7, 7))) {
  m <- sum(case)
  p <- if (m == 0) 1 else binom.test(case[1], m)$p.value
  mid <- if (m == 0) 1 else min(1, 2 * pbinom(min(case), m, .5) - dbinom(min(case), m, .5))
  out("mcnemar exact", case, value = p); out("mcnemar mid-p", case, value = mid)
}
# Paired difference, score interval: constrained likelihood by optimisation. b, c, n, confidence
score <- function(b, c, n, delta) {
  lo <- max(0, -delta) + 1e-14; hi <- (1 - delta) / 2 - 1e-14
  like <- function(q) {                                   # q = p21, p12 = q + delta, rest
    (if (b > 0) b * log(q + delta) else 0) + (if (c > 0) c * log(q) else 0) +
      (if (n - b - c > 0) (n - b - c) * log(1 - 2 * q - delta) else 0)
  }
  q <- optimize(like, c(lo, hi), maximum = TRUE, tol = 1e-15)$maximum
  (b - c - n * delta) / sqrt(n * (2 * q + delta * (1 - delta)))
}
for (case in list(c(12, 3, 100, .95), c(5, 4, 500, .95), c(40, 10, 60, .9), c(1, 9, 44, .95), c(150, 120, 2000, .99))) {
  b <- case[1]; c <- case[2]; n <- case[3]; z <- qnorm((1 + case[4]) / 2); d <- (b - c) / n
  out("paired low", case, value = uniroot(function(x) score(b, c, n, x) - z, c(-.999, d), tol = 1e-12)$root)
  out("paired high", case, value = uniroot(function(x) score(b, c, n, x) + z, c(d, .999), tol = 1e-12)$root)
}
# Holm
p <- c(.01, .04, .03, .005, .2)
h <- p.adjust(p, "holm")
for (i in seq_along(p)) out("holm", i - 1, value = h[i])
# Friedman: chi-square form with ties, and its tail
m <- matrix(c(.98, .97, .60, .99, .99, .10, .95, .90, .90, .88, .89, .02), nrow = 4, byrow = TRUE)
f <- friedman.test(m)
out("friedman statistic", 1, value = unname(f$statistic)); out("friedman chi-square p", 1, value = f$p.value)
# exact tail by all rankings of the same ties
perms <- list(c(1,2,3), c(1,3,2), c(2,1,3), c(2,3,1), c(3,1,2), c(3,2,1))
ranks <- t(apply(m, 1, rank)); seen <- sum(colSums(ranks)^2); hit <- 0
for (i in 1:6) for (j in 1:6) for (k in 1:6) for (l in 1:6) {
  s <- ranks[1, perms[[i]]] + ranks[2, perms[[j]]] + ranks[3, perms[[k]]] + ranks[4, perms[[l]]]
  hit <- hit + (sum(s^2) >= seen - 1e-9)
}
out("friedman exact p", 1, value = hit / 6^4)
# Correlation: r, n, confidence
x <- c(1.2, 2.3, 2.9, 4.1, 5.6, 5.9, 7.3, 8.8); y <- c(2.1, 1.9, 3.7, 4.4, 4.9, 6.8, 6.1, 9.0)
ct <- cor.test(x, y)
out("correlation", 1, value = unname(ct$estimate))
out("correlation low", unname(ct$estimate), 8, .95, value = ct$conf.int[1])
out("correlation high", unname(ct$estimate), 8, .95, value = ct$conf.int[2])
# Lag-1 autocorrelation of the same series
out("lag-1", 1, value = acf(x, plot = FALSE)$acf[2]); out("lag-1", 2, value = acf(y, plot = FALSE)$acf[2])
# Nested variance components, balanced: 3 lots of 2 pieces of 2 repeats, from the mean squares of aov
v <- c(10.1, 10.4, 11.0, 11.3, 14.2, 13.9, 12.8, 13.0, 9.1, 9.6, 8.7, 8.2)
lot <- factor(rep(1:3, each = 4)); piece <- factor(rep(1:6, each = 2))
ms <- summary(aov(v ~ lot / piece))[[1]][["Mean Sq"]]
out("variance lot", 1, value = (ms[1] - ms[2]) / 4); out("variance piece", 1, value = (ms[2] - ms[3]) / 2)
out("variance repeat", 1, value = ms[3])
# Bissell: cpk, n, confidence
for (n in c(25, 50, 100)) out("bissell", 1.67, n, .95,
  value = 1.67 - qnorm(.95) * sqrt(1 / (9 * n) + 1.67^2 / (2 * (n - 1))))
# Alpha spending: fraction, alpha
for (t in c(.25, .5, 1)) {
  out("obrien-fleming", t, .05, value = 2 * (1 - pnorm(qnorm(.975) / sqrt(t))))
  out("pocock", t, .05, value = .05 * log(1 + (exp(1) - 1) * t))
}
# Confidence sequence: count, n, confidence; by the beta mixture
for (case in list(c(3, 100, .95), c(0, 50, .95), c(400, 1000, .99))) {
  s <- case[1]; n <- case[2]; lim <- lbeta(s + 1, n - s + 1) + log(1 - case[3])
  g <- function(p) dbinom(s, n, p, log = TRUE) - lchoose(n, s) - lim
  lo <- if (s == 0) 0 else uniroot(g, c(1e-12, s / n), tol = 1e-14)$root
  out("sequence low", case, value = lo); out("sequence high", case, value = uniroot(g, c(max(s / n, 1e-12), 1 - 1e-12), tol = 1e-14)$root)
}
# Kim-Nelson: k, n0, alpha
out("kim-nelson eta", 6, 20, .05, value = .5 * ((2 * .05 / 5)^(-2 / 19) - 1))
out("kim-nelson h2", 6, 20, .05, value = 19 * ((2 * .05 / 5)^(-2 / 19) - 1))
# Clusters: a rate over 6 lots (counts, sizes), on the log odds with Student's law; counts nearly equal by chance; and a mean
clusters <- function(name, cnt, size) {
  m <- length(cnt); n <- sum(size); r <- sum(cnt) / n
  va <- m / (m - 1) * sum((cnt - r * size)^2) / n^2
  reach <- max(qt(.975, m - 1) * sqrt(va), qnorm(.975) * sqrt(.5 * r * (1 - r) / n)) / (r * (1 - r))
  out(paste(name, "effect"), 1, value = max(1, va / (r * (1 - r) / (n - 1))))
  out(paste(name, "low"), 1, value = plogis(qlogis(r) - reach)); out(paste(name, "high"), 1, value = plogis(qlogis(r) + reach))
}
cnt <- c(3, 0, 7, 2, 1, 9); size <- c(40, 40, 50, 40, 30, 50); n <- sum(size)
clusters("cluster", cnt, size)
clusters("level cluster", c(4, 4, 5, 4, 3, 5), size)
# none of 6 lots: Wilson of as many joints as there are lots, few lots by Student's law
ne <- 6 * (qt(.975, n - 1) / qt(.975, 5))^2
out("no failure cluster high", 1, value = qnorm(.975)^2 / (ne + qnorm(.975)^2))
sums <- c(400.2, 395.1, 520, 402.5, 301, 489); mu <- sum(sums) / n
se <- sqrt(6 / 5 * sum((sums - mu * size)^2)) / n
out("cluster mean high", 1, value = mu + qt(.975, 5) * se)
