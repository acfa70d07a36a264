import { designOfPlan } from '@/core/design/design-of-plan.ts'
import { detectable } from '@/core/design/detectable.ts'
import type { Spread } from '@/core/design/spread.ts'
import { whatShows } from '@/core/design/what-shows.ts'
import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import type { Remedy } from '@/core/fairness/remedy.ts'
import { unitOf } from '@/core/trial/doughs.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { madeItem } from './made-item.ts'

/**
 * Whether the design can answer: one session, in which nothing got its level twice, and the difference that would show
 * against the margin, for these pieces by tasters (of a pair) and for the factor by sessions (of what the verdict will ask). That is known for nine-point scales only:
 * how far other answers scatter, nobody has said. The spread is that learned of the plan's tasters, or what is common without one.
 */
export function evidenceItems(plan: Plan, spread?: Spread | null): FairnessItem[] {
  const unit = unitOf(plan)
  const items: FairnessItem[] = []
  const addSession: Remedy[] = [{ code: 'add-session' }]
  // Flights of one session share the day: they are no second time.
  if (plan.plannedSessions === 1) {
    const data = { unit, flights: plan.flights }
    const path = '/plannedSessions'
    items.push(
      madeItem('one-session', { size: 1, counts: false, data, remedies: addSession, path }),
    )
  }
  const design = designOfPlan(plan, spread ?? undefined)
  const { margin, tasters } = design
  const main = plan.responses.find(({ id }) => id === plan.mainResponseId)
  if (margin === null || tasters < 1 || main?.by !== 'taster') return items
  if (main.scale.kind !== 'nine-point') return items
  const rungs = detectable({ ...design, margin: null })
  const ofPieces = rungs.thesePieces.ok ? rungs.thesePieces.wouldShow : null
  if (ofPieces !== null) {
    const remedies: Remedy[] = [{ code: 'more-tasters' }, { code: 'add-flight' }, ...addSession]
    const data = { wouldShow: ofPieces, margin }
    const size = ofPieces / margin
    items.push(madeItem('few-tasters', { size, data, remedies, path: '/tasters' }))
  }
  const ofFactor = whatShows(rungs.theFactor, plan)
  if (ofFactor !== null) {
    const data = { wouldShow: ofFactor, margin }
    const found = { size: ofFactor / margin, data, remedies: addSession }
    items.push(madeItem('few-sessions', { ...found, path: '/plannedSessions' }))
  }
  return items
}

/** What must be written down before the mix: expectation, main response, margin, control. */
export function intentItems(plan: Plan): FairnessItem[] {
  const bare = { size: 1, counts: false, data: {} }
  const items: FairnessItem[] = []
  const main = plan.responses.find(({ id }) => id === plan.mainResponseId)
  if (!plan.expectation) {
    const remedies: Remedy[] = [{ code: 'write-expectation' }]
    items.push(madeItem('no-expectation', { ...bare, remedies, path: '/expectation' }))
  }
  if (!main) {
    const remedies: Remedy[] = [{ code: 'choose-main-response' }]
    items.push(madeItem('no-main-response', { ...bare, remedies, path: '/mainResponseId' }))
  } else if (main.margin === null) {
    const remedies: Remedy[] = [{ code: 'name-margin' }]
    const path = `/responses/${plan.responses.indexOf(main)}/margin`
    items.push(madeItem('no-margin', { ...bare, remedies, path }))
  }
  if (!plan.levels.some(({ control }) => control)) {
    const remedies: Remedy[] = [{ code: 'mark-control' }]
    const data = { choice: plan.factor.acts.on === 'choice' }
    items.push(madeItem('no-control', { ...bare, data, remedies, path: '/levels' }))
  }
  if (plan.pairsOfHands > 1) {
    const remedies: Remedy[] = [{ code: 'one-pair-of-hands' }]
    const found = { size: plan.pairsOfHands - 1, data: {}, remedies, path: '/pairsOfHands' }
    items.push(madeItem('several-hands', { ...found, counts: false }))
  }
  return items
}
