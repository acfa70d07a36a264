import type { Conclusion } from '@/core/findings/evidence/conclusion-shape.ts'
import { countText, listText } from '@/core/wording/words/list-text.ts'

const mostNamed = 4

/** On whom and on which session the verdict hangs, left out one at a time; empty where that was not looked at. */
export function hangsSentence(
  { hangs, shown }: Pick<Conclusion, 'hangs' | 'shown'>,
  nameOf: (taster: string) => string,
): string {
  if (!hangs.looked) return ''
  const on = [
    ...hangs.tasters.slice(0, mostNamed).map(nameOf),
    ...(hangs.tasters.length > mostNamed
      ? [countText(hangs.tasters.length - mostNamed, 'more taster')]
      : []),
    ...hangs.sessions.map((session) => `session ${session}`),
  ]
  if (on.length === 0)
    return 'Without any one taster, or any one session, the verdict would be the same.'
  return shown.length > 0
    ? `It hangs on ${listText(on)}: without ${on.length === 1 ? 'that' : 'any one of them'} it would say something else.`
    : `Without ${on.length === 1 ? on[0] : `any one of ${listText(on)}`} something would have been shown: it hangs on that.`
}
