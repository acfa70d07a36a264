import { useLocation } from 'wouter'
import { Button } from '@/app/kit/button.tsx'
import { Section } from '@/app/kit/section.tsx'
import { useServices } from '@/app/services/services.ts'
import type { FindingsAnswer } from '@/app/worker/findings-answer.ts'
import { isPresent } from '@/core/findings/reason.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Follows } from '@/core/trial/trial-record.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { nextStepText } from '@/core/wording/conclusion-text.ts'
import { expectationSentence } from '@/core/wording/expectation-sentence.ts'
import { Adopt } from './adopt.tsx'
import styles from './findings.module.css'
import { bestInside, confirmingPlan, narrowingPlan } from './follow-up-plan.ts'
import { winnerAndRival } from './winner.ts'

interface CarryOnProps {
  whole: WholeTrial
  answer: FindingsAnswer
}

/** What to do next, the most pressing first, each ready to go: a house formula, or a new plan that follows this trial. */
export function CarryOn({ whole, answer }: CarryOnProps) {
  const { notebook, newId, now, zone } = useServices()
  const [, navigate] = useLocation()
  const plan = planInForce(whole)
  const { conclusion, findings, scores } = answer
  const pair = winnerAndRival(plan, findings)
  const main = findings.responses[0]
  const shown = main && conclusion.rung ? main[conclusion.rung] : null
  const best = shown && isPresent(shown) && isPresent(shown.best) ? bestInside(shown.best) : null

  const begin = async (how: Follows['how'], next: Plan) => {
    const trialId = await notebook.createTrial(
      { ...next, id: newId(), trialId: newId(), at: now(), zone, accepted: [] },
      { follows: { trialId: whole.trial.id, how }, note: whole.trial.note },
    )
    navigate(`/trial/${trialId}/plan`)
  }

  return (
    <Section title="Carry on">
      <p>{expectationSentence(conclusion, scores, findings)}</p>
      <div className={styles.steps}>
        {conclusion.next.map((step, index) => {
          const { title, text } = nextStepText(step)
          const kind = index === 0 ? 'primary' : 'plain'
          return (
            <div key={step} className={styles.stack}>
              <p>{text}</p>
              {step === 'adopt' && pair ? (
                <Adopt plan={plan} level={pair.winner} kind={kind} />
              ) : null}
              {step === 'confirm' && pair ? (
                <Button
                  kind={kind}
                  onPress={() => begin('confirms', confirmingPlan(plan, pair.winner, pair.rival))}
                >
                  {title}
                </Button>
              ) : null}
              {step === 'narrow' && best !== null ? (
                <Button
                  kind={kind}
                  onPress={() => begin('narrows', narrowingPlan(plan, best, newId))}
                >
                  {title}
                </Button>
              ) : null}
              {step === 'repeat' ? (
                <Button kind={kind} onPress={() => begin('repeats', plan)}>
                  {title}
                </Button>
              ) : null}
            </div>
          )
        })}
      </div>
    </Section>
  )
}
