import { useEffect } from 'react'
import { useSeated } from '@/app/kit/page/seated.ts'
import { draftsOf } from '@/app/services/drafts-of.ts'
import { useServices } from '@/app/services/services.ts'
import { AtTheTable } from '@/app/tasting/seat/at-the-table.tsx'
import type { Seat } from '@/app/tasting/seat/seat.ts'
import { allergensOf } from '@/core/formula/allergens.ts'
import { eventsOfSession } from '@/core/session/effective-events.ts'
import { blindView, servingByCode, setByCodes } from '@/core/tasting/blind-view.ts'
import { effectiveBallots } from '@/core/tasting/effective-ballots.ts'
import { roundsAtTable } from '@/core/tasting/to-turn.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import { tasterName } from '@/core/wording/words/taster-name.ts'
import { LoseTrack } from './alone/lose-track.tsx'
import { useTable } from './tasting-context.ts'
import { useTableLog } from './use-table-log.ts'

/**
 * Seats a taster at the device: what they see is made of their blind view alone, and what they seal finds its way back from the
 * code to the serving here, out of their sight.
 */
export function SeatOfTaster({
  tasterId,
  onRise,
}: {
  tasterId: string
  onRise: () => Promise<void>
}) {
  const { notebook, now } = useServices()
  const { whole, session, state } = useTable()
  const log = useTableLog()
  const { seat: takeScreen } = useSeated()
  useEffect(() => {
    takeScreen(true)
    return () => takeScreen(false)
  }, [takeScreen])
  const about = { kind: 'taster', id: tasterId } as const
  const by = { trialId: whole.trial.id, sessionId: session.id, tasterId }
  const events = eventsOfSession(whole.events, session.id)
  const seat: Seat = {
    name: tasterName(tasterId, whole.kitchen),
    view: blindView(whole, session.id, tasterId),
    allergens: allergensOf(planOfSession(whole, session).formula),
    heard: events.some((event) => event.kind === 'allergens-heard' && event.about.id === tasterId),
    onHeard: () => log({ kind: 'allergens-heard', about }),
    onDecline: async () => {
      await log({ kind: 'declined', about })
      await onRise()
    },
    draftOf: (code) =>
      draftsOf(notebook, `ballot/${session.id}/${tasterId}/${code}`, 'A half-filled ballot'),
    now,
    sealBallot: async (code, { answers, words, startedAt }) => {
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
        ...(words === '' ? {} : { words }),
        ...(before
          ? { replaces: before.id, change: { by: 'the taster', because: 'changed by themselves' } }
          : {}),
      })
    },
    sealSet: async (codes, pickedCode, startedAt) => {
      const set = setByCodes(session, tasterId, codes)
      if (!set) throw new Error(`no set of codes ${codes.join()}`)
      const about = { kind: 'set', id: set.id } as const
      await notebook.sealBallot({ ...by, startedAt, about, answers: [], pickedCode })
    },
    sealRanking: async (ranked, startedAt) => {
      const about = { kind: 'ranking', id: session.id } as const
      await notebook.sealBallot({ ...by, startedAt, about, answers: [], ranked })
    },
    sealGuess: async (code, startedAt) => {
      const about = { kind: 'session', id: session.id } as const
      const picked = code === null ? {} : { pickedCode: code }
      const guessOf = seat.view.guess?.most ? ({ guessOf: 'most' } as const) : {}
      await notebook.sealBallot({ ...by, startedAt, about, answers: [], ...picked, ...guessOf })
    },
    onLeave: async (finished) => {
      if (!finished) await log({ kind: 'seat-left', about })
      await onRise()
    },
  }
  const rounds = roundsAtTable(whole, session.id, tasterId)
  const next = state.tasters.find((each) => each.tasterId === tasterId)?.next?.about.id
  const round = rounds.find(
    ({ setId, plates }) => setId === next || plates.some(({ key }) => key === next),
  )
  const shuffled = events.some(
    (event) => event.kind === 'plates-shuffled' && event.round === round?.number,
  )
  if (seat.heard && round && !shuffled) return <LoseTrack round={round} rounds={rounds.length} />
  const turn = async () => {
    await log({ kind: 'plates-turned', about: { kind: 'session', id: session.id } })
    await onRise()
  }
  const lastPress = rounds.length > 0 ? { words: 'Turn the plates over', onPress: turn } : undefined
  return <AtTheTable seat={seat} lastPress={lastPress} />
}
