import { isPresent } from '@/core/findings/reason.ts'
import type { ResponseFindings } from '@/core/findings/response-findings-shape.ts'
import { levelNameText } from './level-text.ts'
import { asSentenceStart, countWord, listText } from './list-text.ts'
import { decimalText } from './number-text.ts'

/** Do the tasters agree? How many like which level best, and Kendall's W in words. Empty without tasters. */
export function agreementSentence(found: ResponseFindings, unit: string): string {
  if (found.agreement.length === 0) return ''
  const likes = new Map<string, number>()
  for (const { best } of found.agreement) {
    if (!isPresent(best)) continue
    const name = levelNameText(best, unit)
    likes.set(name, (likes.get(name) ?? 0) + 1)
  }
  const sorted = [...likes].toSorted((a, b) => b[1] - a[1])
  const each = sorted.map(([name, count], index) => {
    const word = countWord(count)
    return index === 0
      ? `${word} ${count === 1 ? 'taster likes' : 'tasters like'} ${name} best`
      : `${word} ${name}`
  })
  const said =
    each.length === 0 ? 'No taster has one best level.' : `${asSentenceStart(listText(each))}.`
  if (!isPresent(found.ranks)) return said
  const w = found.ranks.kendallW
  const word = w < 0.3 ? 'hardly agree' : w < 0.6 ? 'agree in part' : 'agree well'
  return `${said} By rank they ${word} (W ${decimalText(w, 2)} of 1).`
}
