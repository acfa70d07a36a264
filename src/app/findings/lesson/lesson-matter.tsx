import { Choice } from '@/app/kit/field/choice.tsx'
import { TextArea } from '@/app/kit/field/text-area.tsx'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Step } from '@/core/trial/step.ts'
import { plainDegrees } from '@/core/units/temperature-text.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { methodLine } from '@/core/wording/house/house-text.ts'
import { coveredText, guessText } from '@/core/wording/lesson/lesson-text.ts'
import { levelText } from '@/core/wording/words/level-text.ts'
import { asSentenceStart, listText } from '@/core/wording/words/list-text.ts'
import styles from './lesson.module.css'
import { LessonAnswer } from './lesson-answer.tsx'
import { LessonDoughs } from './lesson-doughs.tsx'
import { LessonTasting } from './lesson-tasting.tsx'
import type { Lesson } from './use-lesson.ts'

interface MatterProps {
  whole: WholeTrial
  plan: Plan
  lesson: Lesson
}

/** What stands in the part of the lesson that is open. */
export function LessonMatter({ whole, plan, lesson }: MatterProps) {
  switch (lesson.part) {
    case 'question': {
      const levels = plan.levels.map((level) => levelText(level, plan.factor.unitOfMeasure))
      return (
        <>
          <p className={styles.lead}>{plan.question}</p>
          <p>
            {asSentenceStart(plan.factor.name)}: {listText(levels)}. Everything else was to stay the
            same.
          </p>
        </>
      )
    }
    case 'guess':
      return <Guess plan={plan} lesson={lesson} />
    case 'doughs':
      return (
        <>
          <LessonDoughs whole={whole} plan={plan} />
          <Method steps={plan.steps.filter(({ kind }) => !atOven.has(kind))} />
        </>
      )
    case 'oven':
      return <Method steps={plan.steps.filter(({ kind }) => atOven.has(kind))} />
    case 'tasting':
      return <LessonTasting plan={plan} lesson={lesson} />
    default:
      return <LessonAnswer whole={whole} plan={plan} lesson={lesson} part={lesson.part} />
  }
}

/** Steps from the open piece to the table. */
const atOven: ReadonlySet<string> = new Set([
  ...['open', 'top', 'slash', 'bake', 'cool', 'cut', 'serve'],
])

function Method({ steps }: { steps: readonly Step[] }) {
  return (
    <ol className={styles.method}>
      {steps.map((step) => (
        <li key={step.id}>{methodLine(step, plainDegrees)}</li>
      ))}
    </ol>
  )
}

function Guess({ plan, lesson }: { plan: Plan; lesson: Lesson }) {
  const { guess } = lesson.said
  const options = [
    ...plan.levels.map((level) => ({
      value: level.id,
      label: levelText(level, plan.factor.unitOfMeasure),
    })),
    { value: 'alike', label: 'no difference will show' },
  ]
  return (
    <>
      <Choice
        label="Which comes out best?"
        row
        value={guess === null || guess === 'alike' ? guess : guess.levelId}
        options={options}
        onValue={(value) => lesson.say('guess', value)}
      />
      <TextArea
        label="Why? (if you like)"
        value={lesson.why}
        maxLength={500}
        onValue={(why) => lesson.say('why', why)}
      />
      <p className={styles.soft}>
        {guess === null ? coveredText('guess') : guessText(guess, plan)}
      </p>
    </>
  )
}
