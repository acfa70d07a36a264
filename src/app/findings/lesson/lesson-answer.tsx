import { useEffect, useMemo } from 'react'
import { sourceOfTrial } from '@/app/findings/findings-source.ts'
import { Ladder } from '@/app/findings/parts/ladder.tsx'
import { fetchCharts } from '@/app/findings/parts/lazy-charts.ts'
import { ResponsePart } from '@/app/findings/parts/response-part.tsx'
import { RidersPart } from '@/app/findings/parts/riders-part.tsx'
import { NotWorkedOut } from '@/app/kit/page/not-worked-out.tsx'
import { Progress } from '@/app/kit/page/progress.tsx'
import { useFindings } from '@/app/worker/use-findings.ts'
import { type LessonPart, tastedInOrder } from '@/core/lesson/lesson.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { namingOf } from '@/core/wording/findings/answer-of-rung.ts'
import { bakeNowSentence } from '@/core/wording/findings/bake-next.ts'
import { headline, spokenOf } from '@/core/wording/findings/headline.ts'
import { notSettledTexts } from '@/core/wording/findings/not-settled.ts'
import { guessText, ownPlateText } from '@/core/wording/lesson/lesson-text.ts'
import { boundUnits } from '@/core/wording/words/bound-units.ts'
import styles from './lesson.module.css'
import type { Lesson } from './use-lesson.ts'

interface LessonAnswerProps {
  whole: WholeTrial
  plan: Plan
  lesson: Lesson
  part: LessonPart
}

/** What was found, beside what the learner guessed and tasted; then what rode along, and how far it carries. */
export function LessonAnswer({ whole, plan, lesson, part }: LessonAnswerProps) {
  const of = useMemo(() => ({ whole }), [whole])
  const source = useMemo(() => sourceOfTrial(whole), [whole])
  useEffect(fetchCharts, [])
  const found = useFindings(of, null)
  if (found.state === 'working')
    return <Progress label="Working out what the data support" done={null} />
  if (found.state === 'failed')
    return <NotWorkedOut title="The answer could not be worked out" error={found.error} />
  if (!found.answer) throw new Error('a lesson is made of a trial that gives scores')
  const { findings, scores } = found.answer
  const [main] = findings.responses
  if (!main) return <p>No response was planned, so there is no answer.</p>
  const naming = namingOf(findings, scores.responses[0])
  const spoken = spokenOf(main, naming)
  if (part === 'riders') return <RidersPart source={source} />
  if (part === 'reach')
    return (
      <>
        <Ladder found={main} naming={naming} />
        <p>Not settled:</p>
        <ul>
          {notSettledTexts(spoken).map((text) => (
            <li key={text}>{boundUnits(text)}</li>
          ))}
        </ul>
      </>
    )
  const sentence = headline(main, naming)
  return (
    <>
      <p className={styles.lead}>
        {boundUnits(sentence.shown)}{' '}
        <span className={styles.soft}>{boundUnits(sentence.known)}</span>
      </p>
      <p>{guessText(lesson.said.guess, plan)}</p>
      <p>{ownPlateText(tastedInOrder(lesson.said, lesson.plates), plan)}</p>
      <ResponsePart source={source} answer={found.answer} index={0} />
      <p>{boundUnits(bakeNowSentence(spoken))}</p>
    </>
  )
}
