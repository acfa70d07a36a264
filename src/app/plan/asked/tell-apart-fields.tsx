import { FieldRow } from '@/app/kit/field/field-row.tsx'
import { SelectField } from '@/app/kit/field/select-field.tsx'
import { visibleName } from '@/app/plan/field/field-checks.ts'
import { PlanText } from '@/app/plan/field/plan-text.tsx'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { TroubleHere } from '@/app/plan/page/trouble-here.tsx'
import {
  withTellApart,
  withToldLevel,
  withWordsOfSet,
} from '@/core/plan-edits/people/tell-apart.ts'
import type { TellApart } from '@/core/trial/plan-record.ts'
import { tellApartQuestion } from '@/core/wording/tasting/tell-apart-question.ts'
import { levelText } from '@/core/wording/words/level-text.ts'

const namesAttribute = visibleName('what the tasters are to find more of')

type Asked = TellApart['test'] | 'none'

const tests: readonly { value: Asked; label: string }[] = [
  { value: 'none', label: 'not asked' },
  { value: 'triangle', label: 'triangle: three pieces, which one is different' },
  { value: 'duo-trio', label: 'duo-trio: which of two is like the first' },
  { value: 'paired', label: 'paired: which of two has more' },
]

const rightAnswer: Record<TellApart['test'], string> = {
  triangle: 'the odd one of three',
  'duo-trio': 'the one of the last two that is like the first',
  paired: 'the one with more',
}

const usual = ({ asks: _, ...tellApart }: TellApart) => tellApart

/** Whether tasters are asked, after their ballots, to tell two of the levels apart; one set of codes for each of them. */
export function TellApartFields() {
  const levels = usePlanPage((page) => page.plan.levels)
  const unit = usePlanPage((page) => page.plan.factor.unitOfMeasure)
  const ordered = usePlanPage((page) => page.plan.factor.acts.on !== 'choice')
  const tellApart = usePlanPage((page) => page.plan.tellApart)
  const { change } = usePlanActions()
  if (levels.length < 2 && tellApart === null) return null
  const options = levels.map((level) => ({ value: level.id, label: levelText(level, unit) }))
  const missing = { value: '', label: 'choose a level', disabled: true }
  return (
    <>
      <SelectField
        label="Can people tell two of them apart?"
        hint="A set for each taster after the ballots: one answer, right or not."
        value={tellApart?.test ?? 'none'}
        options={tests.filter(({ value }) => ordered || value !== 'paired')}
        onValue={(test) => change((plan) => withTellApart(plan, test))}
      />
      {tellApart ? (
        <FieldRow>
          {[0, 1].map((place) => {
            const id = tellApart.levelIds[place] ?? ''
            const known = levels.some((level) => level.id === id)
            return (
              <SelectField
                key={place}
                label={place === 0 ? 'One of them' : 'The other'}
                value={known ? id : ''}
                options={known ? options : [missing, ...options]}
                onValue={(next) => change((plan) => withToldLevel(plan, place, next))}
              />
            )
          })}
        </FieldRow>
      ) : null}
      {tellApart?.test === 'paired' ? (
        <PlanText
          field="tell-apart/attribute"
          path="/tellApart/attribute"
          label="More of what?"
          hint="In words that tell nothing of the levels, such as saltiness or chew."
          value={tellApart.attribute ?? ''}
          check={namesAttribute}
          onValue={(attribute) =>
            change((plan) => ({
              ...plan,
              tellApart: plan.tellApart && { ...plan.tellApart, attribute },
            }))
          }
        />
      ) : null}
      {tellApart ? (
        <PlanText
          field="tell-apart/asks"
          path="/tellApart/asks"
          label="The set is asked in these words"
          hint={`What a right answer is stays the same: ${rightAnswer[tellApart.test]}. Say nothing of the levels. Left empty: “${tellApartQuestion(usual(tellApart))}”`}
          value={tellApart.asks ?? ''}
          maxLength={200}
          onValue={(asks) => change((plan) => withWordsOfSet(plan, asks))}
        />
      ) : null}
      <TroubleHere at="/tellApart/asks" />
      <TroubleHere at="/tellApart/levelIds/0" />
      <TroubleHere at="/tellApart/levelIds/1" />
    </>
  )
}
