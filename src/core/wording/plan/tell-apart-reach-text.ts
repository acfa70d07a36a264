import type { TellApartReach } from '@/core/design/tell-apart-reach.ts'
import { decimalText } from '@/core/units/number-text.ts'
import { countText } from '@/core/wording/words/list-text.ts'

/** What the planned tell-apart test could show, in plain words. */
export function tellApartReachText({ answers, needed, power, enough }: TellApartReach): string {
  const start = `The tell-apart sets give ${countText(answers, 'answer')}, one for each taster and session`
  const wanted =
    enough === null || enough <= answers
      ? ''
      : ` To find it four times in five takes ${countText(enough, 'answer')}.`
  if (needed === null)
    return `${start}: too few, since even if all were right it could be guessing.${wanted}`
  const times = decimalText(power * 100, 0)
  return `${start}: ${countText(needed, 'right one')} or more would be past guessing. If half of the people can tell the two apart, that is found in ${times} of 100 such trials.${wanted}`
}
