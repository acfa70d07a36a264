import { effectOf } from '@/core/fairness/effect/effect-of.ts'
import { largestByEffect } from '@/core/fairness/effect/largest-by-effect.ts'
import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import { fairnessOfTrial } from '@/core/fairness/fairness-of-trial.ts'
import { isPress } from '@/core/fairness/remedy.ts'
import { learnedMixingWork, workForPlan } from '@/core/learned/learned-mixing-work.ts'
import { sealed } from '@/core/seal/sealed.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { effectText } from '@/core/wording/fairness/effect-text.ts'
import { fairnessPerLevel } from '@/core/wording/fairness/fairness-per-level.ts'
import { fairnessText, severityText } from '@/core/wording/fairness/fairness-text.ts'
import { remedyText } from '@/core/wording/fairness/remedy-text.ts'
import { listText } from '@/core/wording/words/list-text.ts'
import { planStops, stopsText } from './plan-stops.ts'
import { readTrial, stillSealed } from './read-trial.ts'
import { learnOption, taughtSpread } from './taught-by.ts'
import { jsonOption, unsealOption, type Verb } from './verb.ts'
import { wrapped } from './wrapped.ts'

/** What rides along with the factor, how much, and what to do about it: planned, and as logged where there is a log. */
export const fairnessVerb: Verb = {
  summary: 'say what else changes with the factor, and how much',
  about:
    'The riders and weaknesses of the plan with their size and what to do about each; of a trial that was worked, also what its log shows and its doughs teach of the mixing.',
  options: { learn: learnOption, unseal: unsealOption, json: jsonOption },
  answer: async (asked) => {
    const whole = readTrial(asked.file)
    if (sealed(whole) && !asked.flag('unseal')) throw stillSealed(asked.file)
    const plan = planInForce(whole)
    const taught = workForPlan(learnedMixingWork([whole]), plan, whole.kitchen)
    const spread = taughtSpread(asked, whole, plan)?.spread
    const items = fairnessOfTrial(whole, taught, spread)
    if (asked.flag('json'))
      return JSON.stringify(
        items.map((item) => saidItem(item, plan)),
        null,
        2,
      )
    const begun = whole.sessions.length >= plan.plannedSessions
    return [plan.question, ...stopsText(planStops(whole)), ...groups(items, plan, begun)].join(
      '\n\n',
    )
  },
}

function saidItem(item: FairnessItem, plan: Plan) {
  const effect = effectOf(item, plan)
  return { ...item, effect, ...fairnessText(item, plan) }
}

/** Once every planned session was begun there is no start to fix anything before: all is for the next time. */
function groups(items: readonly FairnessItem[], plan: Plan, begun: boolean): string[] {
  const heading = (item: FairnessItem) =>
    item.accepted ? 'Accepted' : severityText(begun ? { ...item, when: 'after' } : item)
  const headings = [...new Set(items.map(heading))]
  return headings.map((title) => {
    const own = items.filter((item) => heading(item) === title)
    const weighed = largestByEffect(own, plan)
    const fine = own.filter(({ severity }) => severity === 'fine')
    const written = [
      ...weighed.map((each) => itemText(each.item, plan, effectText(each, plan))),
      ...fine.map((item) => itemText(item, plan, null)),
    ]
    return [`${title}\n${'═'.repeat([...title].length)}`, ...written].join('\n\n')
  })
}

function itemText(item: FairnessItem, plan: Plan, effect: string | null): string {
  const { title, sentence, why } = fairnessText(item, plan)
  const from = item.when === 'after' ? ' (from the log)' : ''
  const levels = fairnessPerLevel(item, plan)
  const parts = effect === null ? [sentence] : [sentence, why, effect]
  const lines = [wrapped(parts.join(' '), `${title}${from}: `)]
  if (levels && item.severity !== 'fine') {
    const rows = levels.rows.map(({ level, text }) => `${level}: ${text}`)
    lines.push(wrapped(`${listText(rows)} (${levels.what}).`, '    '))
  }
  for (const remedy of item.remedies)
    lines.push(wrapped(remedyText(remedy, plan), isPress(remedy) ? '  * ' : '  - '))
  return lines.join('\n')
}
