import { goodEnoughWords } from './ending-sentence.ts'
import { levelInWords } from './named-in-findings.ts'
import type { Spoken } from './shown-sentence.ts'

/**
 * Whatever the verdict, one plain sentence on what to bake next and why: the level the conclusion ends with, else the usual,
 * else any. `usualName` is the control as it is spoken of, where the conclusion knows none.
 */
export function bakeNowSentence(spoken: Spoken, usualName: string | null = null): string {
  const { conclusion, naming } = spoken
  const { ending, usual } = conclusion
  const good = goodEnoughWords(spoken, true)
  if (ending.level !== null && good !== '') {
    const sure =
      ending.kind === 'adopt'
        ? ''
        : ' It still wants to be made again before it is your house formula.'
    return `On Saturday bake ${levelInWords(ending.level, naming)}: ${good}.${sure}`
  }
  const own = usual === null ? usualName : levelInWords(usual, naming)
  if (own !== null)
    return `On Saturday bake your usual, ${own}: nothing was settled, so there is no reason to change.`
  return 'On Saturday bake whichever is least work: nothing was settled, and none of them is your usual.'
}
