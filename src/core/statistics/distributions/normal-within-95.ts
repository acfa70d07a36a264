/**
 * Within so many standard deviations of its middle a normal quantity lies 95 times in 100: the quantile at 0.975, to the last
 * digit of a double (tables: 1.95996). By itself, so that a page that needs no other quantile loads none of what finds them.
 */
export const within95 = 1.959963984540054
