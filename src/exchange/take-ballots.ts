import { eventsOfSession } from '@/core/session/effective-events.ts'
import type { Notebook } from '@/notebook/notebook.ts'
import { hostOfTexts } from '@/slip/kept-host.ts'
import { headOfReturn } from '@/slip/return-slip.ts'
import { bytesOfScan } from '@/slip/take-return.ts'
import { slipsKey } from '@/slip-host/give-out.ts'
import { takeInReturn } from '@/slip-host/take-in-return.ts'
import type { Entry } from './messages.ts'

/** Takes a taster's ballots in, or that they do not taste. Gives why it was not taken, or null. */
export async function takeBallots(
  notebook: Notebook,
  trialId: string,
  tasterId: string,
  entry: Exclude<Entry, { kind: 'log' | 'plan' }>,
): Promise<string | null> {
  const whole = await notebook.wholeTrial(trialId)
  if (!whole) return 'no-such-trial'
  if (entry.kind === 'declines') {
    const session = whole.sessions.toSorted((a, b) => a.number - b.number).at(-1)
    if (!session) return 'does-not-fit'
    const sessionId = session.id
    const said = eventsOfSession(whole.events, sessionId).some(
      ({ kind, about }) => kind === 'declined' && about.id === tasterId,
    )
    if (!said)
      await notebook.log({
        ...{ trialId, sessionId, kind: 'declined', about: { kind: 'taster', id: tasterId } },
      })
    return null
  }
  const bytes = bytesOfScan(entry.text)
  const head = bytes && headOfReturn(bytes)
  if (!head || head === 'newer-version') return head ?? 'not-a-return'
  for (const { id } of whole.sessions) {
    const host = hostOfTexts(await notebook.draft(slipsKey(id)))
    const slot = host?.issued.find(({ slot }) => slot === head.slot)
    if (host?.tag !== head.tag) continue
    // Each login answers for one taster, whatever slip its phone may hold.
    if (slot?.tasterId !== tasterId) return 'not-of-this-part'
    const took = await takeInReturn(notebook, whole, id, host, entry.text, 'where-none-stands')
    if (took.came === 'refused') return took.reason
    return took.came === 'other-answers' ? 'other-answers' : null
  }
  return 'other-tasting'
}
