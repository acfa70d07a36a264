import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import type { LoggedSession } from '@/core/fairness/logged-sessions.ts'
import { addedSessions, earlyLooks, peeks } from '@/core/seal/looks.ts'
import { effectiveBallots } from '@/core/tasting/effective-ballots.ts'
import { tastersOfSession } from '@/core/tasting/tasters-of-session.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { madeItem } from './made-item.ts'

/** What people did: who came late, left or declined, tastings closed early, peeks, early looks, sessions added. Counts. */
export function conductItems(whole: WholeTrial, logged: readonly LoggedSession[]): FairnessItem[] {
  const people = logged.flatMap(({ session, plan, effective }) => {
    const ballots = effectiveBallots(whole.ballots, session.id)
    return tastersOfSession(session, plan, effective, ballots)
  })
  const absent = {
    late: people.filter(({ late, presence }) => late && presence !== 'awaited').length,
    left: people.filter(({ presence }) => presence === 'left').length,
    declined: people.filter(({ presence }) => presence === 'declined').length,
  }
  const missing = absent.late + absent.left + absent.declined
  const closed = logged.filter(({ effective }) =>
    effective.some(({ kind }) => kind === 'tasting-closed'),
  ).length
  const after = { when: 'after' as const, path: '', data: {} }
  const shut = [{ code: 'keep-findings-shut' as const }]
  const found: FairnessItem[] = [
    madeItem('tasters-missing', { ...after, size: missing, data: absent }),
    madeItem('closed-early', { ...after, size: closed }),
    madeItem('peeks', {
      ...after,
      size: peeks(whole).length,
      remedies: [{ code: 'helper-keeps-key' }],
    }),
    madeItem('early-looks', { ...after, size: earlyLooks(whole).length, remedies: shut }),
    madeItem('added-sessions', { ...after, size: addedSessions(whole).length }),
  ]
  return found.filter(({ amount }) => (amount?.value ?? 0) > 0)
}
