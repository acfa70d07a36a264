import { dayCost } from '@/core/clock-plan/day-cost.ts'
import { designOfPlan } from '@/core/design/design-of-plan.ts'
import { commonSpread } from '@/core/design/spread.ts'
import { tellApartReach } from '@/core/design/tell-apart-reach.ts'
import { whatWouldHelp } from '@/core/design/what-would-help.ts'
import { coveredTitle } from '@/core/seal/covered-title.ts'
import { sealed } from '@/core/seal/sealed.ts'
import { previewNextSession } from '@/core/session/preview-sessions.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { spreadSourceText } from '@/core/wording/findings/learned-text.ts'
import { dayCostRows } from '@/core/wording/plan/day-cost-text.ts'
import {
  detectByQuestion,
  detectByQuestionSays,
  detectRefusal,
  detectSentences,
  detectTable,
} from '@/core/wording/plan/detect-text.ts'
import { tellApartReachText } from '@/core/wording/plan/tell-apart-reach-text.ts'
import { planStops, stopsText } from './plan-stops.ts'
import { readTrial } from './read-trial.ts'
import { learnOption, taughtSpread } from './taught-by.ts'
import { textTable } from './text-table.ts'
import { jsonOption, type Verb } from './verb.ts'
import { wrapped } from './wrapped.ts'

/** What the plan could detect, what one step more would buy, and what a session's day costs. Tells nothing of any level. */
export const detectVerb: Verb = {
  summary: 'say what the plan could detect, and what the day costs',
  about:
    'The smallest true difference that would show with power 0.8, by claim and by what the verdict will ask, as planned and with another session, two more tasters or one level less. Spreads are those common on a nine-point scale, or those that finished trials of the same tasters teach.',
  options: { learn: learnOption, json: jsonOption },
  answer: async (asked) => {
    const whole = readTrial(asked.file)
    const plan = planInForce(whole)
    const covered = sealed(whole)
    const stops = covered ? [] : planStops(whole)
    const refusal = detectRefusal(plan)
    const taught = taughtSpread(asked, whole, plan)
    const spread = taught?.spread ?? commonSpread
    const help = refusal === null ? whatWouldHelp(designOfPlan(plan, spread)) : null
    const reach = tellApartReach(plan)
    const next = previewNextSession(plan, whole.trial.seed, whole.sessions)
    const cost = next.ok ? dayCost(plan, next.session) : next
    if (asked.flag('json'))
      return JSON.stringify(
        {
          detectable: help,
          spread,
          learned: taught?.learned ?? [],
          refused: refusal,
          tellApart: reach,
          dayCost: cost,
          toMend: stops,
        },
        null,
        2,
      )
    const title = covered ? coveredTitle(plan.question, plan.levels) : plan.question
    const parts = [title, ...stopsText(stops)]
    if (help) {
      const { head, rows } = detectTable(help)
      parts.push(wrapped(detectSentences(help.now, plan)))
      parts.push(textTable(head, rows, [false, true, true, true]))
      const asks = detectByQuestion(help)
      parts.push(textTable(asks.head, asks.rows, [false, true, true, true, true, true]))
      parts.push(wrapped(detectByQuestionSays))
      parts.push(
        wrapped(spreadSourceText(spread, taught?.learned ?? [], taught?.trialIds.length ?? 0)),
      )
    } else if (refusal !== null) parts.push(wrapped(refusal))
    if (reach) parts.push(wrapped(tellApartReachText(reach)))
    parts.push(
      cost.ok
        ? textTable(['One session asks', ''], dayCostRows(cost), [false, false])
        : 'What the day costs cannot be said: a dough of the plan cannot be made; check says why.',
    )
    return parts.join('\n\n')
  },
}
