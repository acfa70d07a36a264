/** Hands for taking one piece out of the oven, in seconds: our own guess, since the method does not name it. */
export const pullSeconds = 15
