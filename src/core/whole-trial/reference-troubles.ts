import { checkBallotReferences, checkEvent } from './log-references.ts'
import { checkPlan } from './plan-references.ts'
import { idsOf, References, type ReferenceTrouble } from './references.ts'
import { checkSession } from './session-references.ts'
import type { WholeTrial } from './whole-trial.ts'

/**
 * Everything in a trial that names what is not there, or names twice what must be named once (ids of one list, session numbers,
 * serving codes over the whole trial), each by JSON Pointer with the id or code that is wrong. Empty for a sound trial.
 */
export function referenceTroubles(whole: WholeTrial): ReferenceTrouble[] {
  const references = new References()
  references.known('/trial/planId', whole.trial.planId, idsOf(whole.plans))
  for (const list of ['plans', 'sessions', 'events', 'ballots', 'photos', 'kitchen'] as const)
    references.distinct(`/${list}`, whole[list])
  references.distinctBy(
    '/sessions',
    'number',
    whole.sessions.map((session) => String(session.number)),
  )
  for (const [index, plan] of whole.plans.entries())
    checkPlan(references, whole, plan, `/plans/${index}`)
  for (const [index, session] of whole.sessions.entries())
    checkSession(references, whole, session, `/sessions/${index}`)
  checkCodes(references, whole)
  const eventIds = idsOf(whole.events)
  for (const [index, event] of whole.events.entries())
    checkEvent(references, whole, event, `/events/${index}`, eventIds)
  const ballotIds = idsOf(whole.ballots)
  for (const [index, ballot] of whole.ballots.entries())
    checkBallotReferences(references, whole, ballot, `/ballots/${index}`, ballotIds)
  for (const [index, photo] of whole.photos.entries())
    references.same(`/photos/${index}/trialId`, photo.trialId, whole.trial.id)
  return references.troubles
}

function checkCodes(references: References, whole: WholeTrial): void {
  const seen = new Set<string>()
  const once = (pointer: string, code: string) => {
    if (seen.has(code)) references.troubles.push({ pointer, names: code })
    seen.add(code)
  }
  for (const [index, { dealt }] of whole.sessions.entries()) {
    for (const [place, serving] of dealt.servings.entries())
      once(`/sessions/${index}/dealt/servings/${place}/code`, serving.code)
    for (const [set, { samples }] of dealt.sets.entries())
      for (const [place, sample] of samples.entries())
        once(`/sessions/${index}/dealt/sets/${set}/samples/${place}/code`, sample.code)
  }
}
