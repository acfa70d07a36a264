import { useLocation } from 'wouter'
import styles from '@/app/findings/findings.module.css'
import type { FindingsSource } from '@/app/findings/findings-source.ts'
import { PartFold } from '@/app/findings/parts/part-fold.tsx'
import { arrivingAt } from '@/app/kit/page/arriving-at.ts'
import { Button } from '@/app/kit/press/button.tsx'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import { useServices } from '@/app/services/services.ts'
import type { FindingsAnswer } from '@/app/worker/findings-answer.ts'
import { mendingPlan } from '@/core/fairness/apply-remedy.ts'
import type { FindingsDocument } from '@/core/findings/findings-document.ts'
import { levelToAdopt } from '@/core/findings/judged/level-to-adopt.ts'
import type { NextStep } from '@/core/findings/judged/next-steps.ts'
import { isPresent } from '@/core/findings/reason.ts'
import {
  confirmingPlan,
  followingPlan,
  repeatingPlan,
} from '@/core/plan-edits/follow-up/follow-up-plan.ts'
import { narrowingPlan } from '@/core/plan-edits/follow-up/narrowing-plan.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Follows } from '@/core/trial/trial-record.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { namingOf } from '@/core/wording/findings/answer-of-rung.ts'
import { expectationSentence } from '@/core/wording/findings/expectation-sentence.ts'
import { answerText, headline, spokenOf } from '@/core/wording/findings/headline.ts'
import { nextStepText, nextTitles } from '@/core/wording/findings/next-step-text.ts'
import { lessonOffer } from '@/core/wording/lesson/lesson-text.ts'
import { Adopt } from './adopt.tsx'
import { StopHere } from './stop-here.tsx'
import { TrialOfItsOwn } from './trial-of-its-own.tsx'
import { winnerAndRival } from './winner.ts'

interface CarryOnProps {
  source: FindingsSource
  answer: FindingsAnswer
}

/** What to do next, the most pressing first; of a trial each is ready to go, of a table it is advice. */
export function CarryOn({ source, answer }: CarryOnProps) {
  const { next, findings, scores } = answer
  const { whole } = source
  const [main] = findings.responses
  if (!main) return null
  const spoken = spokenOf(main, namingOf(findings, scores.responses[0]))
  return (
    <PartFold
      title="Carry on"
      result={whole ? expectationSentence(spoken, scores) : nextTitles(next, spoken)}
    >
      <div className={styles.steps}>
        {next.map((step) => (
          <div key={step} className={styles.step}>
            <p>{nextStepText(step, spoken).text}</p>
            {whole ? (
              <StepPress
                whole={whole}
                source={source}
                answer={answer}
                step={step}
                title={nextStepText(step, spoken).title}
                kind="plain"
              />
            ) : null}
          </div>
        ))}
        {whole ? <AdoptAnother whole={whole} answer={answer} /> : null}
        {whole ? <TrialOfItsOwn whole={whole} /> : null}
        {whole ? (
          <div className={styles.step}>
            <p>{lessonOffer}</p>
            <LinkButton href={`#/trial/${whole.trial.id}/lesson`}>Open as a lesson</LinkButton>
          </div>
        ) : null}
      </div>
    </PartFold>
  )
}

/** Enough to let the factor itself be spoken of. */
const evenings = 2

/**
 * The first two steps as presses beside what to bake next, the most pressing filled; after one evening alone the evenings to come, or
 * to stop here. Nothing where a table has no trial to carry on.
 */
export function FirstSteps({ source, answer }: CarryOnProps) {
  const { findings, scores, next } = answer
  const { whole } = source
  const [main] = findings.responses
  if (!main || !whole) return null
  const spoken = spokenOf(main, namingOf(findings, scores.responses[0]))
  const alone = main.conclusion.oneEvening !== null
  const steps: NextStep[] = alone ? ['repeat'] : next.slice(0, 2)
  return (
    <div className={styles.presses}>
      {steps.map((step, index) => (
        <StepPress
          key={step}
          whole={whole}
          source={source}
          answer={answer}
          step={step}
          title={nextStepText(step, spoken).title}
          kind={index === 0 ? 'primary' : 'plain'}
        />
      ))}
      {alone ? <StopHere whole={whole} /> : null}
    </div>
  )
}

/** Any level may be kept, whatever was found: the usual at first, or what the baker picks, with the reason. */
function AdoptAnother({ whole, answer }: { whole: WholeTrial; answer: FindingsAnswer }) {
  const plan = planInForce(whole)
  const { findings, scores } = answer
  const [main] = findings.responses
  const level = plan.levels.find(({ control }) => control) ?? plan.levels[0]
  if (!main || !level) return null
  const said = answerText(headline(main, namingOf(findings, scores.responses[0])))
  return (
    <div className={styles.step}>
      <p>Any level can become the house formula; what was found, and your reason, stay with it.</p>
      <Adopt
        whole={whole}
        findings={findings}
        level={level}
        said={said}
        kind="plain"
        title="Adopt a level of my choice"
      />
    </div>
  )
}

interface StepPressProps extends CarryOnProps {
  whole: WholeTrial
  step: NextStep
  title: string
  kind: 'primary' | 'plain'
}

/** A plan that follows, and how. */
interface Followed {
  how: Follows['how']
  next: Plan
}

function StepPress({ whole, source, answer, step, title, kind }: StepPressProps) {
  const { notebook, newId, now, zone } = useServices()
  const [, navigate] = useLocation()
  const plan = planInForce(whole)
  const { findings } = answer
  const pair = winnerAndRival(plan, findings)
  const [main] = findings.responses
  const chosen = levelToAdopt(plan, findings)
  if (step === 'adopt') {
    if (!main || !chosen) return null
    const said = answerText(headline(main, namingOf(findings, answer.scores.responses[0])))
    return <Adopt whole={whole} findings={findings} level={chosen.level} said={said} kind={kind} />
  }
  const alone = main?.conclusion.oneEvening
  if (step === 'repeat' && alone?.left !== 0)
    return (
      <Button kind={kind} onPress={() => navigate(`/trial/${whole.trial.id}/plan`)}>
        {title}
      </Button>
    )
  const best = bestInside(findings)
  const answered = main && isPresent(main.factor) ? main.factor : null
  const learned = {
    newId,
    kitchen: whole.kitchen,
    unitVariance: answered === null ? null : answered.residualSd ** 2,
  }
  // The plan that follows is made at the press: a mended one asks for the whole fairness check, a narrowed one for chances.
  const follows: Record<Exclude<NextStep, 'adopt'>, (() => Followed) | null> = {
    // After one evening alone: on two evenings of a trial of its own, mended where the plan left something.
    repeat: () => ({
      how: 'repeats',
      next: repeatingPlan(mendingPlan(plan, source.fairness()), evenings),
    }),
    mend: () => ({ how: 'repeats', next: mendingPlan(plan, source.fairness()) }),
    confirm:
      pair && (() => ({ how: 'confirms', next: confirmingPlan(plan, pair.winner, pair.rival) })),
    narrow: best && (() => ({ how: 'narrows', next: narrowingPlan(plan, best, learned) })),
  }
  const follow = follows[step]
  if (!follow) return null
  const begin = async () => {
    const { how, next } = follow()
    const trialId = await notebook.createTrial(followingPlan(next, { newId, at: now(), zone }), {
      follows: { trialId: whole.trial.id, how },
      note: whole.trial.note,
    })
    navigate(`/trial/${trialId}/plan`, step === 'mend' ? arrivingAt('plan-fairness') : undefined)
  }
  return (
    <Button kind={kind} onPress={begin}>
      {title}
    </Button>
  )
}

/** The stretch to narrow to: where the best may lie, once it is shown to lie in between. */
export function bestInside({ responses }: FindingsDocument): { low: number; high: number } | null {
  const conclusion = responses[0]?.conclusion
  if (!conclusion?.next.includes('narrow') || !isPresent(conclusion.place)) return null
  const { low, high } = conclusion.place
  return { low, high }
}
