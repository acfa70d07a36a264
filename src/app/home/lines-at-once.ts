/** As many lines as a person looks through before searching; drawing thousands would make the notebook slow to open. */
export const linesAtOnce = 50
