import type { Event } from '@/core/session/event-record.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Ballot } from '@/core/tasting/ballot-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { idsOf, type References } from './references.ts'
import type { WholeTrial } from './whole-trial.ts'

interface Within {
  sessions: Session[]
  plans: Plan[]
}

/** The session an entry belongs to with its plan, or all of them where it belongs to none. */
function within(whole: WholeTrial, sessionId: string | null): Within {
  const sessions = whole.sessions.filter((one) => sessionId === null || one.id === sessionId)
  const plans = whole.plans.filter(
    (plan) => sessionId === null || sessions.some((session) => session.planId === plan.id),
  )
  return { sessions, plans }
}

/** What an event is about must be there, in its own session; and so must what it corrects and what its answer belongs to. */
export function checkEvent(
  references: References,
  whole: WholeTrial,
  event: Event,
  at: string,
  eventIds: ReadonlySet<string>,
): void {
  const here = within(whole, event.sessionId)
  references.same(`${at}/trialId`, event.trialId, whole.trial.id)
  references.known(`${at}/sessionId`, event.sessionId, idsOf(whole.sessions))
  if (event.sessionId !== null && here.sessions.length === 0) return
  references.known(`${at}/about/id`, event.about.id, aboutIds(whole, here, event.about.kind))
  references.known(`${at}/corrects`, event.corrects, eventIds)
  if (event.corrects === event.id)
    references.troubles.push({ pointer: `${at}/corrects`, names: event.id })
  const all = (pick: (plan: Plan) => { id: string }[]) => idsOf(here.plans.flatMap(pick))
  switch (event.kind) {
    case 'weighed':
      // A ripe starter is weighed whole, under its preferment's id.
      references.known(
        `${at}/ingredientId`,
        event.ingredientId,
        all((plan) => [...plan.formula.ingredients, ...plan.formula.preferments]),
      )
      references.known(
        `${at}/prefermentId`,
        event.prefermentId,
        all((plan) => plan.formula.preferments),
      )
      break
    case 'step-started':
    case 'step-stopped':
      references.known(
        `${at}/stepId`,
        event.stepId,
        all((plan) => plan.steps),
      )
      break
    case 'measured':
      references.known(
        `${at}/responseId`,
        event.responseId,
        all((plan) => plan.responses),
      )
      break
    case 'photo':
      references.known(`${at}/photoId`, event.photoId, idsOf(whole.photos))
      break
    case 'void':
      if (event.corrects === undefined) references.troubles.push({ pointer: at, names: event.id })
      break
    default:
  }
}

function aboutIds(
  whole: WholeTrial,
  { sessions, plans }: Within,
  kind: Event['about']['kind'],
): ReadonlySet<string> {
  switch (kind) {
    case 'trial':
      return new Set([whole.trial.id])
    case 'session':
      return idsOf(sessions)
    case 'batch':
      return idsOf(sessions.flatMap((session) => session.batches))
    case 'piece':
      return idsOf(sessions.flatMap((session) => session.pieces))
    case 'serving':
      return idsOf(sessions.flatMap((session) => session.dealt.servings))
    case 'set':
      return idsOf(sessions.flatMap((session) => session.dealt.sets))
    case 'step':
      return idsOf(plans.flatMap((plan) => plan.steps))
    case 'taster':
      return idsOf(whole.kitchen.filter((thing) => thing.kind === 'taster'))
  }
}

/** A ballot must name its session, taster, serving or set, the responses it answers, and the ballot it replaces. */
export function checkBallotReferences(
  references: References,
  whole: WholeTrial,
  ballot: Ballot,
  at: string,
  ballotIds: ReadonlySet<string>,
): void {
  const { sessions, plans } = within(whole, ballot.sessionId)
  references.same(`${at}/trialId`, ballot.trialId, whole.trial.id)
  references.known(`${at}/sessionId`, ballot.sessionId, idsOf(whole.sessions))
  const tasters = whole.kitchen.filter((thing) => thing.kind === 'taster')
  references.known(`${at}/tasterId`, ballot.tasterId, idsOf(tasters))
  references.known(`${at}/replaces`, ballot.replaces, ballotIds)
  if (sessions.length === 0) return
  references.known(
    `${at}/about/id`,
    ballot.about.id,
    aboutIds(whole, { sessions, plans }, ballot.about.kind),
  )
  const responses = idsOf(plans.flatMap((plan) => plan.responses))
  for (const [index, answer] of ballot.answers.entries())
    references.known(`${at}/answers/${index}/responseId`, answer.responseId, responses)
}
