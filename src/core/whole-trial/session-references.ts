import type { Session } from '@/core/session/session-record.ts'
import { idsOf, type References } from './references.ts'
import type { WholeTrial } from './whole-trial.ts'

/** What a session was dealt must name its own doughs, pieces and servings, and the levels of the plan it runs. */
export function checkSession(
  references: References,
  whole: WholeTrial,
  session: Session,
  at: string,
): void {
  const plan = whole.plans.find((one) => one.id === session.planId)
  const levels = idsOf(plan?.levels ?? [])
  const level = (pointer: string, id: string | null) => {
    if (plan) references.known(pointer, id, levels)
  }
  references.same(`${at}/trialId`, session.trialId, whole.trial.id)
  references.known(`${at}/planId`, session.planId, idsOf(whole.plans))
  references.distinct(`${at}/batches`, session.batches)
  references.distinctBy(
    `${at}/batches`,
    'letter',
    session.batches.map((batch) => batch.letter),
  )
  references.distinct(`${at}/pieces`, session.pieces)
  for (const [index, batch] of session.batches.entries())
    level(`${at}/batches/${index}/levelId`, batch.levelId)
  const batches = idsOf(session.batches)
  const flights = idsOf(session.dealt.flights)
  for (const [index, piece] of session.pieces.entries()) {
    references.known(`${at}/pieces/${index}/batchId`, piece.batchId, batches)
    references.known(`${at}/pieces/${index}/flightId`, piece.flightId, flights)
    level(`${at}/pieces/${index}/levelId`, piece.levelId)
  }
  checkDealt(references, whole, session, `${at}/dealt`)
  for (const [index, { levelId }] of session.dealt.letters.entries())
    level(`${at}/dealt/letters/${index}/levelId`, levelId)
  for (const [index, { levelId }] of (session.dealt.tickets ?? []).entries())
    level(`${at}/dealt/tickets/${index}/levelId`, levelId)
  for (const [index, set] of session.dealt.sets.entries())
    for (const [place, { levelId }] of set.samples.entries())
      level(`${at}/dealt/sets/${index}/samples/${place}/levelId`, levelId)
}

function checkDealt(
  references: References,
  whole: WholeTrial,
  { batches, pieces, dealt }: Session,
  at: string,
): void {
  const tasters = idsOf(whole.kitchen.filter((thing) => thing.kind === 'taster'))
  const pieceIds = idsOf(pieces)
  // A piece is baked once: it stands in one flight and in one load.
  const placed = { flights: new Set<string>(), loads: new Set<string>() }
  for (const list of ['flights', 'loads'] as const) {
    references.distinct(`${at}/${list}`, dealt[list])
    for (const [index, one] of dealt[list].entries())
      for (const [place, id] of one.pieceIds.entries()) {
        const here = `${at}/${list}/${index}/pieceIds/${place}`
        references.known(here, id, pieceIds)
        if (placed[list].has(id)) references.troubles.push({ pointer: here, names: id })
        placed[list].add(id)
      }
  }
  references.once(`${at}/doughOrder`, dealt.doughOrder)
  const batchIds = idsOf(batches)
  for (const [index, id] of dealt.doughOrder.entries())
    references.known(`${at}/doughOrder/${index}`, id, batchIds)
  const levelIds = dealt.letters.map(({ levelId }) => levelId)
  references.distinctBy(`${at}/letters`, 'levelId', levelIds)
  references.distinct(`${at}/servings`, dealt.servings)
  const flightIds = idsOf(dealt.flights)
  const servings = idsOf(dealt.servings)
  for (const [index, serving] of dealt.servings.entries()) {
    references.known(`${at}/servings/${index}/pieceId`, serving.pieceId, pieceIds)
    references.known(`${at}/servings/${index}/flightId`, serving.flightId, flightIds)
    references.known(`${at}/servings/${index}/repeats`, serving.repeats, servings)
  }
  references.distinctBy(
    `${at}/tasterOrders`,
    'tasterId',
    dealt.tasterOrders.map(({ tasterId }) => tasterId),
  )
  for (const [index, order] of dealt.tasterOrders.entries()) {
    references.known(`${at}/tasterOrders/${index}/tasterId`, order.tasterId, tasters)
    references.once(`${at}/tasterOrders/${index}/servingIds`, order.servingIds)
    for (const [place, id] of order.servingIds.entries())
      references.known(`${at}/tasterOrders/${index}/servingIds/${place}`, id, servings)
  }
  references.distinct(`${at}/sets`, dealt.sets)
  for (const [index, set] of dealt.sets.entries()) {
    const codes = new Set(set.samples.map((sample) => sample.code))
    references.known(`${at}/sets/${index}/tasterId`, set.tasterId, tasters)
    references.known(`${at}/sets/${index}/answerCode`, set.answerCode, codes)
  }
}
