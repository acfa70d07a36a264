import { format } from 'date-fns'
import { Choice } from '@/app/kit/field/choice.tsx'
import { FieldRow } from '@/app/kit/field/field-row.tsx'
import { Notice } from '@/app/kit/page/notice.tsx'
import { levelCheck, visibleName } from '@/app/plan/field/field-checks.ts'
import { PlanNumber } from '@/app/plan/field/plan-number.tsx'
import { PlanText } from '@/app/plan/field/plan-text.tsx'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { PlanSection } from '@/app/plan/page/plan-section.tsx'
import { TroubleHere } from '@/app/plan/page/trouble-here.tsx'
import { useWholeTrial } from '@/app/services/use-whole-trial.ts'
import { withExpectation } from '@/core/plan-edits/start/expectation.ts'
import { lockedSince } from '@/core/seal/lock.ts'
import type { Expectation } from '@/core/trial/expectation.ts'
import { shortUnit } from '@/core/units/number-text.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { clockTime } from '@/core/wording/words/civil-time.ts'

const namesQuestion = visibleName('the question')

/** What is asked, in the baker's words: it stands over every place of the trial. */
export function QuestionSection() {
  const question = usePlanPage((page) => page.plan.question)
  const { change } = usePlanActions()
  return (
    <PlanSection id="plan-question">
      <PlanText
        field="question"
        path="/question"
        label="Question"
        hint="One question about one thing, such as “How wet should our focaccia be?”"
        value={question}
        check={namesQuestion}
        onValue={(next) => change((plan) => ({ ...plan, question: next }))}
        wide
      />
    </PlanSection>
  )
}

/** Since when what was written first is locked; nothing before the first mix. */
export function LockedNote() {
  const whole = useWholeTrial()
  const since = lockedSince(whole)
  if (since === null) return null
  return (
    <Notice kind="know" title="Locked">
      Expectation and main response are locked since the first mix, {format(since, 'd MMM yyyy')},{' '}
      {clockTime(since, planInForce(whole).zone)}.
    </Notice>
  )
}

function directionOptions(choice: boolean) {
  const none = { value: 'no-difference', label: 'It will make no difference' } as const
  if (choice) return [{ value: 'rises', label: 'The options will differ' } as const, none]
  return [
    { value: 'rises', label: 'It rises with the level' } as const,
    { value: 'falls', label: 'It falls with the level' } as const,
    { value: 'best-inside', label: 'It is best somewhere in between' } as const,
    none,
  ]
}

/** What is expected of the main response, the bet on the best level, and why; written before the first mix. */
export function ExpectationFields({ locked }: { locked: boolean }) {
  const expectation = usePlanPage((page) => page.plan.expectation)
  const choice = usePlanPage((page) => page.plan.factor.acts.on === 'choice')
  const unit = usePlanPage((page) => page.plan.factor.unitOfMeasure)
  const { change } = usePlanActions()
  const edit = (next: Partial<Expectation>) => change((plan) => withExpectation(plan, next))
  return (
    <div data-path="/expectation">
      <FieldRow>
        <Choice
          label="What do you expect of the main response?"
          hint="Written down before the first mix, so that nobody remembers it otherwise afterwards."
          value={expectation?.direction ?? null}
          options={directionOptions(choice)}
          onValue={(direction) => edit({ direction })}
          disabled={locked}
        />
        {expectation ? (
          <>
            {choice || expectation.direction === 'no-difference' ? null : (
              <PlanNumber
                field="expectation/bestGuess"
                path="/expectation/bestGuess"
                label="Your bet on the best level"
                unit={shortUnit(unit)}
                value={expectation.bestGuess}
                check={levelCheck}
                onValue={(bestGuess) => edit({ bestGuess })}
                may="be-empty"
                disabled={locked}
              />
            )}
            <PlanText
              field="expectation/why"
              label="Why (if you like)"
              value={expectation.why ?? ''}
              onValue={(why) => edit({ why })}
              maxLength={5000}
              disabled={locked}
              wide
            />
          </>
        ) : null}
      </FieldRow>
      <TroubleHere at="/expectation" />
    </div>
  )
}
