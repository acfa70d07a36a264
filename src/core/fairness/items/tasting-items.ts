import { mostSamples, samplesPerSitting } from '@/core/clock-plan/samples-per-sitting.ts'
import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import type { Remedy } from '@/core/fairness/remedy.ts'
import { tasterQuestions } from '@/core/tasting/taster-questions.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { onShuffledPlates } from '@/core/trial/served-at-table.ts'
import { madeItem } from './made-item.ts'

/** Who scores, what they know and hear, and how much a mouth is asked: only where somebody tastes. */
export function tastingItems(plan: Plan): FairnessItem[] {
  const items: FairnessItem[] = bakerScores(plan)
  if (tasterQuestions(plan).length === 0 && !plan.tellApart) return items
  const bare = { size: 1, counts: false, data: {} }
  if (plan.tastersTalk) {
    const remedies: Remedy[] = [{ code: 'tasters-silent' }]
    items.push(madeItem('tasters-talk', { ...bare, remedies, path: '/tastersTalk' }))
  }
  // Shuffled plates have no key.
  if (plan.keyKeptBy === 'baker' && !onShuffledPlates(plan)) {
    const remedies: Remedy[] = [{ code: 'helper-keeps-key' }]
    items.push(madeItem('key-keeper', { ...bare, remedies, path: '/keyKeptBy' }))
  }
  const knowing = plan.tasters.filter(({ knows }) => knows).length
  if (knowing > 0) {
    const data = { knowing, tasters: plan.tasters.length }
    const remedies: Remedy[] = [{ code: 'blind-tasters' }]
    const size = knowing / plan.tasters.length
    items.push(madeItem('knowing-tasters', { size, data, remedies, path: '/tasters' }))
  }
  if (plan.servingRule.trim() === '') {
    const topped = plan.steps.some(({ kind }) => kind === 'top')
    const remedies: Remedy[] = [{ code: 'write-serving-rule' }]
    const found = { data: { topped }, remedies, path: '/servingRule' }
    items.push(madeItem('serving-rule', { ...found, size: topped ? 2 : 1, counts: false }))
  }
  if (plan.serving === 'as-baked' && !plan.warmUpPiece) {
    const remedies: Remedy[] = [{ code: 'add-warm-up' }]
    items.push(madeItem('no-warm-up', { ...bare, remedies, path: '/warmUpPiece' }))
  }
  return [...items, ...sampleItems(plan)]
}

function sampleItems(plan: Plan): FairnessItem[] {
  const size = samplesPerSitting(plan)
  if (size <= mostSamples) return []
  const remedies: Remedy[] = plan.flights > 1 ? [{ code: 'drop-flight' }] : []
  const data = { usualMost: mostSamples }
  return [madeItem('many-samples', { size, data, remedies, path: '/flights' })]
}

/** The baker's own score as the main response: not blind, since who mixed a dough knows it. Measurements are no scores. */
function bakerScores({ responses, mainResponseId }: Plan): FairnessItem[] {
  const at = responses.findIndex(({ id }) => id === mainResponseId)
  const main = responses[at]
  if (main?.by !== 'baker' || main.scale.kind === 'measured') return []
  const remedies: Remedy[] = [{ code: 'tasters-score', responseId: main.id }]
  const found = { size: 1, counts: false, data: { name: main.name }, remedies }
  return [madeItem('baker-scores', { ...found, path: `/responses/${at}/by` })]
}
