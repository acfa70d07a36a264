/** How a number is worked out, one press deeper than the number: what was done, and where the method comes from. */
export interface MethodNote {
  title: string
  text: string
  source: string
}

/**
 * A note for every kind of number the findings show. Sources marked "textbook" are the standard literature named from
 * memory; the computations themselves are checked against outside values in the tests.
 */
export const methodNotes = {
  levels: {
    title: 'Means at each level',
    text: 'The count, mean and spread over all scores of a level describe what happened. The bars drawn are means freed from who happened to taste: a missing strict taster does not lift a level. Each bar is a plain 95 % t interval on the spread its rung compares.',
    source: 'Marginal (least-squares) means: Searle, Speed & Milliken 1980 (textbook).',
  },
  rungs: {
    title: 'Three rungs of evidence',
    text: 'Many tasters scoring one dough tell much about that dough and little about the factor, which needs the dough to be made again. So each claim has its own error: pieces by the tasters, doughs by the flights, the factor by what got its level separately in each session. Only the third says that the factor matters.',
    source: 'Hurlbert 1984, Ecological Monographs 54:187, on pseudo-replication.',
  },
  matter: {
    title: 'Does it matter?',
    text: 'Levels are compared within tasters or within blocks, and F weighs the differences between levels against the spread that is left. p is how often a difference this large would turn up if the levels did not differ at all. A large p never shows that there is no difference.',
    source: 'Randomised complete blocks: Fisher 1935 (textbook).',
  },
  pairs: {
    title: 'Which differ',
    text: 'Every interval allows for all the pairs looked at together, so that the whole table is wrong at most once in twenty trials. An interval that leaves zero out is a difference; one wholly beyond the margin is a difference that matters to you.',
    source: 'Tukey 1953, Kramer 1956 for unequal numbers (textbook).',
  },
  control: {
    title: 'Against the control',
    text: 'With a control each level is compared with it alone, which asks less and finds more than all pairs.',
    source: 'Dunnett 1955, Journal of the American Statistical Association 50:1096 (textbook).',
  },
  trend: {
    title: 'Which way',
    text: 'A straight line through blocks and levels: how much the response changes for one unit of the factor, with its 95 % interval.',
    source: 'Least squares by orthogonal decomposition (textbook).',
  },
  best: {
    title: 'Where the best lies',
    text: 'A parabola through blocks and levels; its top is the best value. The interval holds every value that the data cannot exclude as the top. It can be open on a side, or everything: then no best is claimed. A test of fit asks whether a parabola is a fair picture of the levels.',
    source: 'Fieller 1954, Journal of the Royal Statistical Society B 16:175 (textbook).',
  },
  bootstrap: {
    title: 'The best, by re-drawing',
    text: 'The tasters (from eight up) or the sessions are drawn again with replacement many times and the best is worked out anew each time; the middle 95 % are shown. It takes the tasters as a sample of people like them. The seed is kept, so the numbers come out the same again.',
    source: 'Efron 1979, Annals of Statistics 7:1 (textbook).',
  },
  ranks: {
    title: 'By rank',
    text: 'Each taster’s levels are put in order and only the order counts, so nobody’s use of the scale weighs more. Tasters with an empty cell are left out and counted. W runs from 0 (no agreement) to 1 (one order).',
    source: 'Friedman 1937; Kendall & Babington Smith 1939; ISO 8587 for rank sums (not seen).',
  },
  easiest: {
    title: 'The easiest that is as good',
    text: 'A level is as good when it falls short of the best liked one by less than the margin, even at the unfavourable end of a one-sided 95 % interval. Among those the easiest to handle is proposed: fewest failures, least hands-on time, best handling.',
    source: 'One-sided non-inferiority (textbook).',
  },
  freshness: {
    title: 'Was it freshness, or the order?',
    text: 'The levels are compared again as if all had been tasted at the same minutes from the oven (or the same position). Where that makes the intervals more than three times as wide, level and freshness cannot be told apart.',
    source: 'Analysis of covariance (textbook).',
  },
  justAboutRight: {
    title: 'Too much or too little',
    text: 'The shares are over all answers. The cost of a side is how much lower the response was there than where it was called just about right, with taster and level allowed for. It is given only for a side that at least a fifth of all answers, five servings and four tasters chose.',
    source: 'Mean drop within a least-squares model; the fifth is common practice.',
  },
  agreement: {
    title: 'Do the tasters agree?',
    text: 'Each taster’s own means, the level they like best, and how their scores go with those of the others. People may differ honestly: a mean can please nobody.',
    source: 'Correlation with the rest of the panel (common practice).',
  },
  tradeOff: {
    title: 'Trade-off',
    text: 'Each response becomes a number from 0 (not acceptable) to 1 (as good as it gets); the weighted geometric mean is the whole. One 0 makes the whole 0. The parts always stand beside it.',
    source: 'Derringer & Suich 1980, Journal of Quality Technology 12:214.',
  },
  tellApart: {
    title: 'Can people tell them apart?',
    text: 'The count of right answers against what guessing would give, exactly. One answer for each person and set counts as independent.',
    source: 'Binomial test as in sensory practice (ISO 4120, not seen).',
  },
  handling: {
    title: 'Handling scores',
    text: 'Given by the baker at the bench, who knows the dough: they are not blind.',
    source: 'Common practice.',
  },
} as const satisfies Record<string, MethodNote>

export type MethodTopic = keyof typeof methodNotes
