/** How many resamples the bootstrap of the best draws. */
export const usualResamples = 10_000
