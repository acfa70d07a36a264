import { isPresent } from '@/core/findings/reason.ts'
import type { ResponseFindings } from '@/core/findings/response-findings-shape.ts'
import type { Better } from '@/core/trial/response.ts'
import { decimalText } from '@/core/units/number-text.ts'
import { asSentenceStart, countWord, listText } from '@/core/wording/words/list-text.ts'
import { type LevelNaming, levelInWords } from './named-in-findings.ts'

/**
 * Do the tasters agree? How many find which level best, and Kendall's W in words. Empty without tasters. Where neither
 * more nor less counts as better no level is best, and only the agreement is said.
 */
export function agreementSentence(
  found: ResponseFindings,
  naming: LevelNaming,
  better: Better['is'] = 'higher',
): string {
  if (found.agreement.length === 0) return ''
  const best = better === 'neither' ? '' : bestOfEach(found, naming)
  return [best, agreementOf(found, better)].filter(Boolean).join(' ')
}

function bestOfEach(found: ResponseFindings, naming: LevelNaming): string {
  const likes = new Map<string, number>()
  for (const { best } of found.agreement) {
    if (!isPresent(best)) continue
    likes.set(best, (likes.get(best) ?? 0) + 1)
  }
  const sorted = [...likes].toSorted((a, b) => b[1] - a[1])
  const each = sorted.map(([levelId, count], index) => {
    const name = levelInWords(levelId, naming)
    const word = countWord(count)
    return index === 0
      ? `${word} ${count === 1 ? 'taster finds' : 'tasters find'} ${name} best`
      : `${word} ${name}`
  })
  if (each.length === 0) return 'No taster has one best level.'
  return `${asSentenceStart(listText(each))}.`
}

function agreementOf({ ranks }: ResponseFindings, better: Better['is']): string {
  if (!isPresent(ranks)) return ''
  const w = ranks.kendallW
  const word = w < 0.3 ? 'hardly agree' : w < 0.6 ? 'agree in part' : 'agree well'
  const who = better === 'neither' ? 'the tasters' : 'they'
  return `By rank ${who} ${word} (W ${decimalText(w, 2)} of 1).`
}
