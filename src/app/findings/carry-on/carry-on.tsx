import { useLocation } from 'wouter'
import styles from '@/app/findings/findings.module.css'
import { Method } from '@/app/findings/parts/method.tsx'
import type { Subject } from '@/app/findings/subject.ts'
import { arrivingAt } from '@/app/kit/page/arriving-at.ts'
import { Section } from '@/app/kit/page/section.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import type { FindingsAnswer } from '@/app/worker/findings-answer.ts'
import { mendingPlan } from '@/core/fairness/mending-plan.ts'
import { bestPlace } from '@/core/findings/best/best-place.ts'
import type { Conclusion } from '@/core/findings/judged/conclusion.ts'
import { isPresent } from '@/core/findings/reason.ts'
import { confirmingPlan, narrowingPlan } from '@/core/plan-edits/follow-up/follow-up-plan.ts'
import { followingPlan } from '@/core/plan-edits/follow-up/following-plan.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Follows } from '@/core/trial/trial-record.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { nextStepText } from '@/core/wording/findings/conclusion-text.ts'
import { expectationSentence } from '@/core/wording/findings/expectation-sentence.ts'
import { boundUnits } from '@/core/wording/words/bound-units.ts'
import { Adopt } from './adopt.tsx'
import { winnerAndRival } from './winner.ts'

interface CarryOnProps {
  subject: Subject
  answer: FindingsAnswer
}

type Step = Conclusion['next'][number]

/** What to do next, the most pressing first; of a trial each is ready to go, of a table it is advice. */
export function CarryOn({ subject, answer }: CarryOnProps) {
  const { conclusion, findings, scores } = answer
  const { whole } = subject
  return (
    <Section title="Carry on">
      {whole ? <p>{boundUnits(expectationSentence(conclusion, scores, findings))}</p> : null}
      <div className={styles.steps}>
        {conclusion.next.map((step, index) => (
          <div key={step} className={styles.step}>
            <p>{nextStepText(step).text}</p>
            {whole ? (
              <StepPress
                whole={whole}
                subject={subject}
                answer={answer}
                step={step}
                kind={index === 0 ? 'primary' : 'plain'}
              />
            ) : null}
          </div>
        ))}
      </div>
      {whole ? <Method topics={['best']} /> : null}
    </Section>
  )
}

interface StepPressProps extends CarryOnProps {
  whole: WholeTrial
  step: Step
  kind: 'primary' | 'plain'
}

function StepPress({ whole, subject, answer, step, kind }: StepPressProps) {
  const { notebook, newId, now, zone } = useServices()
  const [, navigate] = useLocation()
  const plan = planInForce(whole)
  const { conclusion, findings } = answer
  const pair = winnerAndRival(plan, findings)
  if (step === 'adopt') return pair ? <Adopt plan={plan} level={pair.winner} kind={kind} /> : null
  const main = findings.responses[0]
  const shown = main && conclusion.rung ? main[conclusion.rung] : null
  const best = shown && isPresent(shown) && isPresent(shown.best) ? bestPlace(shown.best) : null
  const follows: Record<Exclude<Step, 'adopt'>, { how: Follows['how']; next: Plan } | null> = {
    mend: { how: 'repeats', next: mendingPlan(plan, subject.fairness) },
    confirm: pair && { how: 'confirms', next: confirmingPlan(plan, pair.winner, pair.rival) },
    narrow: best === null ? null : { how: 'narrows', next: narrowingPlan(plan, best, newId) },
    repeat: { how: 'repeats', next: plan },
  }
  const follow = follows[step]
  if (!follow) return null
  const begin = async () => {
    const trialId = await notebook.createTrial(
      followingPlan(follow.next, { newId, at: now(), zone }),
      { follows: { trialId: whole.trial.id, how: follow.how }, note: whole.trial.note },
    )
    navigate(`/trial/${trialId}/plan`, step === 'mend' ? arrivingAt('plan-fairness') : undefined)
  }
  return (
    <Button kind={kind} onPress={begin}>
      {nextStepText(step).title}
    </Button>
  )
}
