/** The ends between which a temperature can be logged. */
export const loggedEnds = { leastCelsius: -80, mostCelsius: 700 }

/** What keeps a typed number from being logged, in words that name the mend; undefined when it can stand. */
export const amountCheck = {
  grams: (grams: number) =>
    grams < 0 || grams > 1_000_000 ? 'Give a mass from 0 g to 1 000 000 g.' : undefined,
  celsius: (celsius: number) =>
    celsius < -80 || celsius > 700 ? 'Give a temperature from −80 °C to 700 °C.' : undefined,
  rise: (percent: number) =>
    percent < -100 || percent > 2000 ? 'Give a rise from −100 % to 2000 %.' : undefined,
  size: (value: number) =>
    value < 0 || value > 1_000_000 ? 'Give a size from 0 to 1 000 000.' : undefined,
  any: (_value: number) => undefined,
}
