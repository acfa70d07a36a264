/** Why a series of levels cannot be made, with the mend. */
export function seriesRefusal(reason: string): string {
  return reason === 'same-ends'
    ? 'First and last are the same. Write two different numbers.'
    : 'Write two different numbers and a count from 2 to 12.'
}
