/**
 * A short script in R (base only) that reads the observations and fits the main model again: unit means freed from the tasters,
 * then mean ~ session + level. For one session it has no block of its own to set the levels against, and says so.
 */
export const archiveScript = `# Fits the main model again: unit means freed from the tasters, then mean ~ session + level.
obs <- read.csv("observations.csv", stringsAsFactors = FALSE)
main <- obs[obs$main == 1, ]
main$unit <- factor(main$unit)
shared <- length(unique(main$taster)) > 1
first <- if (shared) lm(value ~ factor(taster) + unit, main) else lm(value ~ unit, main)
units <- unique(main[c("unit", "session", "level")])
units <- units[order(units$unit), ]
units$mean <- c(0, coef(first)[grep("^unit", names(coef(first)))])
print(anova(lm(mean ~ factor(session) + factor(level), units)))
`
