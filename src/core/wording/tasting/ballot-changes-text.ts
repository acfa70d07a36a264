import type { BallotChange, SaidInBallot } from '@/core/tasting/ballot-changes.ts'
import { plainNumber } from '@/core/units/number-text.ts'
import { countText, listText } from '@/core/wording/words/list-text.ts'
import { rankedWords } from './ranking-text.ts'

const words: Record<BallotChange['what'], string> = {
  changed: 'changed',
  voided: 'voided',
  late: 'came late',
}

/** Which ballot it is and what was done, without a score: what may be said while codes are kept. */
export function changeHead(change: BallotChange, nameOf: (tasterId: string) => string): string {
  const by = change.by === null ? '' : ` by ${change.by}`
  const because = change.because === null ? '' : `: ${change.because}`
  return `${nameOf(change.tasterId)}, ${ballotOf(change)}, session ${change.sessionNumber}: ${words[change.what]}${lateText(change)}${by}${because}`
}

/** Before a sheet is typed in that came once the tasting was over: what is done with it. */
export function lateSheetText(codesOpen: boolean): string {
  const when = codesOpen ? ' The record says that the codes were open by then.' : ''
  return `The tasting is over. A sheet that is typed in now is kept and shown as late: it stands in no finding, and nothing that was found changes.${when}`
}

/** How a late ballot came, and whether whoever brought it could have known by then which code was which. */
function lateText({ late }: BallotChange): string {
  if (!late) return ''
  const when = late.codesOpen ? ' when the codes were open' : ' before the codes were open'
  return `${when}${late.typedBy === null ? '' : `, typed from paper by ${late.typedBy}`}`
}

/** What a ballot is of, without a score: its code, its set, the order or the guess at the end. */
export function ballotOf({ of, codes }: Pick<BallotChange, 'of' | 'codes'>): string {
  switch (of) {
    case 'serving':
      return codes.join()
    case 'set':
      return `the set ${codes.join(' · ')}`
    case 'ranking':
      return 'the order'
    case 'session':
      return 'the guess at the end'
  }
}

/** What a ballot says: scores in the order of the questions (“Liking 7, Chew left out”), the order, the pick or the guess. */
export function saidText(
  said: SaidInBallot | null,
  responses: readonly { id: string; name: string }[],
): string {
  if (said === null) return 'nothing'
  const { about, answers, pickedCode, guessOf, ranked } = said
  if (ranked) return rankedWords(ranked)
  if (about.kind === 'set') return `picked ${pickedCode ?? 'none'}`
  if (about.kind === 'session')
    return pickedCode === undefined
      ? 'no idea'
      : `${pickedCode} ${guessOf === 'most' ? 'has most of it' : 'is the usual one'}`
  const told = answers.map(({ responseId, value, why }) => {
    const name = responses.find(({ id }) => id === responseId)?.name ?? ''
    return `${name} ${value === null ? `left out${why ? ` (${why})` : ''}` : plainNumber(value)}`
  })
  return told.length === 0 ? 'tasted' : told.join(', ')
}

/** How many ballots were changed, voided and late, in one sentence; empty where none was. */
export function changesCountText(changes: readonly BallotChange[]): string {
  const count = (what: BallotChange['what']) => changes.filter((each) => each.what === what).length
  const parts = (['changed', 'voided', 'late'] as const).flatMap((what) =>
    count(what) === 0 ? [] : [`${countText(count(what), 'ballot')} ${words[what]}`],
  )
  return parts.length === 0 ? '' : listText(parts)
}
