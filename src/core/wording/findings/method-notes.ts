/** How a number is worked out, one press deeper than the number: what was done, and where the method comes from. */
export interface MethodNote {
  title: string
  text: string
  source: string
}

/**
 * A note for every number the findings show. Sources marked "textbook" are the standard literature named from memory; the
 * computations themselves are checked against outside values in the tests.
 */
export const methodNotes = {
  verdict: {
    title: 'What the sentence claims',
    text: 'What was expected before the first mix fixes one question. A rise or fall: the straight line through the levels, then the last level less the first for the size, then pairs. A best in between: the bend, then the inner levels against each end, then pairs. Each stops at the first step that is not shown. What was expected may use 4 of the 5 wrong calls in 100 trials, a surprise the fifth. Nothing expected: the clearer of line and bend; a choice: all pairs, or each against the usual where that was written first. No difference is claimed only where every pair lies inside the margin with its one-sided 95 % bound. Leans: nothing is shown, but chance alone would lean as far in one of five trials.',
    source:
      'Fixed sequences of tests (textbook); the shares of 4 and 1: worked out by simulation and quadrature for this project, checked against R.',
  },
  levels: {
    title: 'n, mean, SD, interval and median of a level',
    text: 'Over all scores of a level, whoever gave them: their count, mean, standard deviation (n − 1), plain 95 % t interval and median. They describe what happened and compare nothing.',
    source: 'Student 1908 (textbook).',
  },
  means: {
    title: 'Means that are compared',
    text: 'The bars drawn are means freed from who happened to taste: a missing strict taster does not lift a level. Each has its standard error and a plain 95 % t interval on the spread its rung compares.',
    source: 'Marginal (least-squares) means: Searle, Speed & Milliken 1980 (textbook).',
  },
  band: {
    title: 'The curve and its band',
    text: 'The parabola through blocks and levels (a line for two levels), at the height of the average block; the band is its plain 95 % t interval, point by point.',
    source: 'Least squares by orthogonal decomposition (textbook).',
  },
  rungs: {
    title: 'Three rungs of evidence',
    text: 'Many tasters scoring one dough tell much about that dough and little about the factor, which needs the dough to be made again. So each claim has its own error: pieces by the tasters, doughs by the flights, the factor by what got its level separately in each session. Only the third says that the factor matters.',
    source: 'Hurlbert 1984, Ecological Monographs 54:187, on pseudo-replication.',
  },
  matter: {
    title: 'F, its degrees of freedom and p',
    text: 'Levels are compared within tasters or within blocks, and F weighs the differences between levels against the spread that is left; the two degrees of freedom count what each rests on. p is how often a difference this large would turn up if the levels did not differ at all. A large p never shows that there is no difference.',
    source:
      'Randomised complete blocks: Fisher 1935 (textbook); type II sums of squares where numbers are unequal.',
  },
  residual: {
    title: 'Residual SD',
    text: 'The spread that is left when blocks and levels are taken out: what a rung’s own error is made of.',
    source: 'Least squares by orthogonal decomposition (textbook).',
  },
  pairs: {
    title: 'Pairs',
    text: 'Each difference is the second level’s mean less the first’s. Every interval and p allows for all the pairs looked at together, so that the whole table is wrong at most once in twenty trials. An interval that leaves zero out is a difference; one wholly beyond the margin is a difference that matters to you.',
    source: 'Tukey 1953, Kramer 1956 for unequal numbers (textbook).',
  },
  control: {
    title: 'Against the control',
    text: 'With a control each level is compared with it alone, which asks less than all pairs. It carries the verdict only where that was written down before the mix.',
    source: 'Dunnett 1955, Journal of the American Statistical Association 50:1096 (textbook).',
  },
  trend: {
    title: 'Slope',
    text: 'A straight line through the levels: how much the response changes for one unit of the factor, with its plain 95 % t interval and p. Over these pieces it is the mean of the tasters’ own slopes, and its error is how these differ.',
    source: 'Least squares by orthogonal decomposition (textbook).',
  },
  best: {
    title: 'Where the best lies',
    text: 'A level may be the best when no other beats it by more than the one-sided 95 % bound. The stretch runs from the first such level to the last, half a gap wider on each side and never past the levels tried; an end among them may hide a better place past it. It asks for one hump, not for a curve. Only where the best is shown to lie in between does the top of a parabola stand beside it, for the case that the hump is even. For a response with a target it is where the curve meets the target, with Fieller’s interval.',
    source:
      'Worked out by simulation and quadrature for this project, checked against R. Fieller 1954, Journal of the Royal Statistical Society B 16:175 (textbook).',
  },
  delta: {
    title: 'The interval by the delta method',
    text: 'The top’s own standard error from a straight-line approximation, times t. It is always bounded, also where the data do not bound the top, and so never claimed; it stands there for comparison with other programs.',
    source: 'Propagation of variances (textbook).',
  },
  lackOfFit: {
    title: 'Fit of the curve',
    text: 'How much better free means of the levels fit than the parabola, against the residual spread. A small p says that a parabola is too simple. With three levels a parabola always fits.',
    source: 'Draper & Smith, Applied Regression Analysis (textbook).',
  },
  asHandled: {
    title: 'Over the levels as handled',
    text: 'The same curve once more, at the levels the log says the doughs came to: weights as weighed, bench flour, wet hands. Everything else goes by the planned levels.',
    source: 'Common practice.',
  },
  bootstrap: {
    title: 'The best, by re-drawing',
    text: 'The tasters (from eight up) or the sessions are drawn again with replacement many times and the curve’s top is worked out anew each time; the middle 95 % are shown. It says where the bests of such panels fall, and is no interval for the best: such an interval would hold it in about 70 of 100 trials. The seed is kept, so the numbers come out the same again.',
    source: 'Efron 1979, Annals of Statistics 7:1 (textbook).',
  },
  ranks: {
    title: 'Chi-square by rank and W',
    text: 'Each taster’s levels are put in order and only the order counts, so nobody’s use of the scale weighs more. Tasters with an empty cell are left out and counted. Chi-square weighs the rank sums against chance; W runs from 0 (no agreement) to 1 (one order).',
    source: 'Friedman 1937; Kendall & Babington Smith 1939 (textbook).',
  },
  rankDifference: {
    title: 'Least difference of rank sums',
    text: 'Two levels differ by rank when their sums are this far apart, at 5 %. It is looked at only after a clear difference by rank.',
    source: 'After textbooks; the text of the standard, ISO 8587, was not consulted.',
  },
  page: {
    title: 'Page’s L',
    text: 'Do the ranks rise with the levels? The rank sums times 1, 2, 3 … and so on, against all ways of dealing the ranks. The direction written down before the first mix decides the side of p; without one it is two-sided.',
    source:
      'Page 1963, Journal of the American Statistical Association 58:216 (by its title; the article was not consulted).',
  },
  equivalence: {
    title: 'As good as the best',
    text: 'A level’s mean less that of the best other level, and how far it may fall short at most; where lower is better it is turned, so that below zero is always worse. A level named before the mix needs a plain one-sided 95 % bound. Without a name all are looked at, so they step down from the surest, each by a bound that allows for those that are left.',
    source:
      'Comparisons with the best: Hsu 1984 (textbook). Worked out by simulation and quadrature for this project, checked against R.',
  },
  easiest: {
    title: 'The easiest that is as good',
    text: 'The level named before the mix, where it passed. Else among those as good: fewest failures, then best handling, then least hands-on time, then the control, then the lowest level.',
    source: 'This notebook’s own order (common practice).',
  },
  handling: {
    title: 'Failures, hands-on time, handling',
    text: 'Failures are counted pieces that failed, of all counted pieces. Hands-on time is that of one line through the planned method. Handling scores are the baker’s at the bench, who knows the dough: they are not blind, and are turned so that 9 is easiest: a 3 of stickiness stands as a 7.',
    source: 'Common practice.',
  },
  freshness: {
    title: 'Was it freshness, or the order?',
    text: 'The slope is the change of the scores for 10 minutes from the oven (or one place in the order). Where it varies inside a dough it is taken from there alone, else from the means of what was compared. The levels are then compared as if all had been tasted at the same minute or place; p is of that comparison. The widening is how much wider a difference gets by it: beyond 2, level and freshness cannot be told apart; below four degrees of freedom there are too few sessions to say.',
    source:
      'Analysis of covariance: Fisher 1932 (textbook). The limits: worked out by simulation and quadrature for this project, checked against R.',
  },
  justAboutRight: {
    title: 'Shares of too little and too much',
    text: 'The shares are over all answers; right is the middle of the five.',
    source:
      'Just-about-right scales: Rothman & Parker (eds) 2009, ASTM MNL63 (by its title; the text was not consulted).',
  },
  meanDrop: {
    title: 'What a side costs',
    text: 'How much lower the response was there than where it was called just about right, with taster and piece allowed for, so that a piece that is bad for another reason does not count, and its 95 % t interval. It is given only for a side that at least a fifth of all answers, five servings and four tasters chose.',
    source: 'Mean drop within a least-squares model; the fifth is common practice.',
  },
  agreement: {
    title: 'Each taster’s own means and best',
    text: 'The mean of a taster’s scores at each level and the level with the best of them. People may differ honestly: a mean can please nobody.',
    source: 'Common practice.',
  },
  correlation: {
    title: 'With the rest, and SD',
    text: 'The correlation of a taster’s level means with the mean of the others’, over the levels both have: 1 goes along, 0 has nothing to do with it, below 0 goes against. SD is the spread of a taster’s scores: how much of the scale they use.',
    source: 'Pearson’s correlation (textbook); with the rest of the panel: common practice.',
  },
  tradeOff: {
    title: 'Trade-off',
    text: 'Each response becomes a number from 0 (not acceptable) to 1 (as good as it gets); the weighted geometric mean is the whole. One 0 makes the whole 0. The parts always stand beside it.',
    source: 'Derringer & Suich 1980, Journal of Quality Technology 12:214.',
  },
  ranking: {
    title: 'In what order they were put',
    text: 'Each taster’s order is a block: Friedman’s test asks whether the tasters agree more than by chance, with shared places at their mean rank. Who ranked in several sessions counts once, by the mean of their ranks. Only after a clear answer are pairs looked at, by the least difference of rank sums. An order says that things differ, not by how much; it speaks of the pieces that were tasted.',
    source:
      'Friedman 1937 (textbook formulas, with ties); least difference of rank sums as in ISO 8587, whose text was not consulted.',
  },
  tellApart: {
    title: 'Can people tell them apart?',
    text: 'The count of right answers against what guessing would give; p is exact: if nobody could tell, every answer would be a guess of its own. It speaks of the pieces that were tasted; that two levels differ takes pieces made again.',
    source:
      'Binomial test as in sensory practice, after textbooks; the text of the standard, ISO 4120, was not consulted.',
  },
  discriminators: {
    title: 'How many tell them apart',
    text: 'Of those who guess, one in three (or two) is right all the same; taking them off leaves the share who really tell, with the exact 95 % interval turned the same way. The interval counts people, not answers: who answers three times is still one person.',
    source: 'Clopper & Pearson 1934 (textbook); correction for guessing: Abbott 1925 (textbook).',
  },
} as const satisfies Record<string, MethodNote>

export type MethodTopic = keyof typeof methodNotes
