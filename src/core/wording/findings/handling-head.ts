/** Handling scores are turned so that more is easier, whichever way they were asked; the head of their column says so. */
export const handlingHead = 'Ease of handling, 9 is easiest'
