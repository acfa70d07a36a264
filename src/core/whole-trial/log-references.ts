import type { Event } from '@/core/session/event-record.ts'
import type { Ballot } from '@/core/tasting/ballot-record.ts'
import { namedWithin } from './named-within.ts'
import type { References } from './references.ts'
import type { WholeTrial } from './whole-trial.ts'

/** What an event is about must be there, in its own session; and so must what it corrects and what its answer belongs to. */
export function checkEvent(
  references: References,
  whole: WholeTrial,
  event: Event,
  at: string,
  eventIds: ReadonlySet<string>,
): void {
  const { sessions, ids } = namedWithin(whole, event.sessionId)
  references.same(`${at}/trialId`, event.trialId, whole.trial.id)
  references.known(`${at}/sessionId`, event.sessionId, namedWithin(whole, null).ids('session'))
  if (event.sessionId !== null && sessions === 0) return
  references.known(`${at}/about/id`, event.about.id, ids(event.about.kind))
  references.known(`${at}/corrects`, event.corrects, eventIds)
  if (event.corrects === event.id)
    references.troubles.push({ pointer: `${at}/corrects`, names: event.id })
  switch (event.kind) {
    case 'weighed':
      references.known(`${at}/ingredientId`, event.ingredientId, ids('ingredient'))
      references.known(`${at}/prefermentId`, event.prefermentId, ids('preferment'))
      break
    case 'step-started':
    case 'hands-off':
    case 'step-stopped':
    case 'step-skipped':
    case 'step-added':
    case 'wait-changed':
    case 'folded':
      references.known(`${at}/stepId`, event.stepId, ids('step'))
      break
    case 'bake-in':
    case 'bake-out':
      references.known(`${at}/stepId`, event.stepId, ids('step'))
      references.once(`${at}/pieceIds`, event.pieceIds ?? [])
      for (const [index, id] of (event.pieceIds ?? []).entries())
        references.known(`${at}/pieceIds/${index}`, id, ids('piece'))
      break
    case 'measured':
      references.known(`${at}/responseId`, event.responseId, ids('response'))
      break
    case 'made-again':
      references.known(`${at}/batchId`, event.batchId, ids('batch'))
      break
    case 'unsealed':
      for (const [index, { servingId, pieceId }] of (event.turned?.plates ?? []).entries()) {
        references.known(`${at}/turned/plates/${index}/servingId`, servingId, ids('serving'))
        references.known(`${at}/turned/plates/${index}/pieceId`, pieceId, ids('piece'))
      }
      for (const [index, { batchId }] of (event.turned?.doughs ?? []).entries())
        references.known(`${at}/turned/doughs/${index}/batchId`, batchId, ids('batch'))
      break
    case 'photo':
      references.known(`${at}/photoId`, event.photoId, ids('photo'))
      break
    case 'void':
      if (event.corrects === undefined) references.troubles.push({ pointer: at, names: event.id })
      break
    default:
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
  const { sessions, ids } = namedWithin(whole, ballot.sessionId)
  references.same(`${at}/trialId`, ballot.trialId, whole.trial.id)
  references.known(`${at}/sessionId`, ballot.sessionId, namedWithin(whole, null).ids('session'))
  references.known(`${at}/tasterId`, ballot.tasterId, ids('taster'))
  references.known(`${at}/replaces`, ballot.replaces, ballotIds)
  if (sessions === 0) return
  references.known(`${at}/about/id`, ballot.about.id, ids(ballot.about.kind))
  const ranked = ballot.ranked?.flat() ?? []
  for (const code of ranked) references.known(`${at}/ranked`, code, ids('code'))
  references.once(`${at}/ranked`, ranked)
  references.distinctBy(
    `${at}/answers`,
    'responseId',
    ballot.answers.map((answer) => answer.responseId),
  )
  for (const [index, answer] of ballot.answers.entries())
    references.known(`${at}/answers/${index}/responseId`, answer.responseId, ids('response'))
}
