import { draftsOf } from '@/app/services/drafts-of.ts'
import { useServices } from '@/app/services/services.ts'
import { AtTheTable } from '@/app/tasting/seat/at-the-table.tsx'
import type { Seat } from '@/app/tasting/seat/seat.ts'
import { blindView, servingByCode, setByCodes } from '@/core/tasting/blind-view.ts'
import { effectiveBallots } from '@/core/tasting/effective-ballots.ts'
import { tasterName } from '@/core/wording/words/taster-name.ts'
import { useTable } from './tasting-context.ts'

/**
 * Seats a taster at the device: what they see is made of their blind view alone, and what they seal finds its way back from the
 * code to the serving here, out of their sight.
 */
export function SeatOfTaster({ tasterId, onLeave }: { tasterId: string; onLeave: () => void }) {
  const { notebook, now } = useServices()
  const { whole, session } = useTable()
  const by = { trialId: whole.trial.id, sessionId: session.id, tasterId }
  const seat: Seat = {
    name: tasterName(tasterId, whole.kitchen),
    view: blindView(whole, session.id, tasterId),
    draftOf: (code) =>
      draftsOf(notebook, `ballot/${session.id}/${tasterId}/${code}`, 'A half-filled ballot'),
    now,
    sealBallot: async (code, answers, startedAt) => {
      const serving = servingByCode(session, code)
      if (!serving) throw new Error(`no serving under code ${code}`)
      const before = effectiveBallots(whole.ballots, session.id).find(
        (ballot) => ballot.tasterId === tasterId && ballot.about.id === serving.id,
      )
      await notebook.sealBallot({
        ...by,
        startedAt,
        about: { kind: 'serving', id: serving.id },
        answers,
        ...(before ? { replaces: before.id } : {}),
      })
    },
    sealSet: async (codes, pickedCode, startedAt) => {
      const set = setByCodes(session, tasterId, codes)
      if (!set) throw new Error(`no set of codes ${codes.join()}`)
      const about = { kind: 'set', id: set.id } as const
      await notebook.sealBallot({ ...by, startedAt, about, answers: [], pickedCode })
    },
    onLeave,
  }
  return <AtTheTable seat={seat} />
}
