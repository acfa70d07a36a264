import type { Conclusion } from '@/core/findings/evidence/conclusion-shape.ts'
import { countText, listText } from '@/core/wording/words/list-text.ts'

const mostNamed = 4

/** On whom and on which session the verdict hangs, left out one at a time; empty where that was not looked at. */
export function hangsSentence(
  { hangs, shown }: Pick<Conclusion, 'hangs' | 'shown'>,
  nameOf: (taster: string) => string,
): string {
  if (!hangs.looked) return ''
  const on = namesOf(hangs, nameOf)
  const endsOn = namesOf(hangs.ending, nameOf)
  const ends = endsOn.length > 0 ? `how it ends hangs on ${listText(endsOn)}` : ''
  if (on.length === 0)
    return ends
      ? `Without any one taster, or any one session, the same would be shown; only ${ends}.`
      : 'Without any one taster, or any one session, the verdict would be the same.'
  const first =
    shown.length > 0
      ? `It hangs on ${listText(on)}: without ${on.length === 1 ? 'that' : 'any one of them'} it would say something else.`
      : `Without ${on.length === 1 ? on[0] : `any one of ${listText(on)}`} something would have been shown: it hangs on that.`
  return ends ? `${first} Beside that, ${ends}.` : first
}

function namesOf(
  { tasters, sessions }: Pick<Conclusion['hangs'], 'tasters' | 'sessions'>,
  nameOf: (taster: string) => string,
): string[] {
  const more = tasters.length - mostNamed
  return [
    ...tasters.slice(0, mostNamed).map(nameOf),
    ...(more > 0 ? [countText(more, 'more taster')] : []),
    ...sessions.map((session) => `session ${session}`),
  ]
}
