import { useEffect, useRef, useState } from 'react'
import { TextArea } from '@/app/kit/field/text-area.tsx'
import { useDraft } from '@/app/kit/field/use-draft.ts'
import { Button } from '@/app/kit/press/button.tsx'
import type { BlindServing, Question } from '@/core/seal/blind/blind-view.ts'
import { checkAnswers } from '@/core/seal/blind/check-answers.ts'
import { onlyTastedText } from '@/core/wording/tasting/before-first-text.ts'
import { servingInSentence, servingName } from '@/core/wording/tasting/serving-name.ts'
import { draftAnswers, draftOf, wordsField } from './ballot-draft.ts'
import { QuestionEntry } from './question-entry.tsx'
import type { Seat } from './seat.ts'
import { SeatPage } from './seat-page.tsx'
import styles from './tasting.module.css'

interface BallotFormProps {
  seat: Seat
  serving: BlindServing
  /** What was sealed just before and may still be mended; null where there is none. */
  sealedBefore: BlindServing | null
  onMend: (code: string) => void
  /** Sealed, or one that was sealed before left as it is. */
  onDone: () => void
  leave: React.ReactNode
}

/**
 * The ballot of one code: liking first and alone, then the rest. Unfinished answers survive a reload; sealing stores it whole,
 * for good.
 */
export function BallotForm(props: BallotFormProps) {
  const { seat, serving, sealedBefore, onMend, onDone, leave } = props
  const { view, now } = seat
  const { code, position, sealed: before } = serving
  const name = servingName(serving)
  const [tried, setTried] = useState(false)
  const [done, setDone] = useState(false)
  const open = useRef<HTMLDivElement>(null)
  const draft = useDraft(seat.draftOf(code))
  const { ready, values, fillIn } = draft
  const opened = values.startedAt
  useEffect(() => {
    if (ready && !done && opened === undefined)
      fillIn({
        startedAt: String(now()),
        ...(before ? draftOf(before.answers, before.startedAt, before.words) : {}),
      })
  }, [ready, done, opened, fillIn, now, before])
  if (!ready) return null
  const answers = draftAnswers(view.questions, values)
  const checked = checkAnswers(answers, view.questions)
  const answered = new Set(answers.map(({ responseId }) => responseId))
  const left = view.questions.filter(({ responseId }) => !answered.has(responseId)).length
  const close = () => {
    setDone(true)
    draft.clear()
    onDone()
  }
  const seal = async () => {
    setTried(true)
    if (!checked.ok) {
      open.current?.querySelector<HTMLElement>('button, input')?.focus()
      return
    }
    const words = values[wordsField]?.trim() ?? ''
    await seat.sealBallot(code, { answers, words, startedAt: Number(opened ?? now()) })
    close()
  }
  // Until the next sample stands there, nothing of the sealed one can be pressed: such a press would go nowhere.
  if (done)
    return (
      <SeatPage title={name} name={seat.name} progress={`${position} of ${view.servings.length}`}>
        <p role="status">Sealed.</p>
      </SeatPage>
    )
  const troubles = tried && !checked.ok ? checked.troubles : []
  const shown = askedNow(view.questions, answered)
  const firstOpen = shown.find(({ responseId }) => !answered.has(responseId))?.responseId
  return (
    <SeatPage
      title={name}
      name={seat.name}
      progress={`${position} of ${view.servings.length}`}
      leave={leave}
      foot={
        <>
          {before ? (
            <Button size="bench" onPress={close}>
              Leave it as it is
            </Button>
          ) : null}
          <Button size="bench" kind={checked.ok ? 'primary' : 'plain'} onPress={seal}>
            {left > 0
              ? `${left} still to answer`
              : view.questions.length === 0 && !before
                ? `${name}: I have tasted it`
                : `Seal ${servingInSentence(serving)}${before ? ' anew' : ''}`}
          </Button>
        </>
      }
    >
      {before ? (
        <p className={styles.quiet}>Sealed before: what is sealed now takes its place.</p>
      ) : sealedBefore === null ? null : (
        <p className={styles.sealedLine}>
          {servingName(sealedBefore)} sealed.{' '}
          <Button kind="quiet" size="small" onPress={() => onMend(sealedBefore.code)}>
            Change {servingInSentence(sealedBefore)}
          </Button>
        </p>
      )}
      {view.questions.length === 0 ? <p className={styles.lead}>{onlyTastedText(view)}</p> : null}
      {shown.map((question) => (
        <div key={question.responseId} ref={question.responseId === firstOpen ? open : null}>
          <QuestionEntry
            question={question}
            draft={draft}
            trouble={troubles.find((each) => each.responseId === question.responseId)}
          />
        </div>
      ))}
      {shown.length < view.questions.length ? null : (
        <OwnWords
          value={values[wordsField] ?? ''}
          onValue={(words) => draft.set(wordsField, words)}
        />
      )}
      <p role="status" className={styles.quiet}>
        {troubles.length > 0 ? 'Some questions are still open, see above.' : ''}
      </p>
    </SeatPage>
  )
}

/** A taster's own words, behind one press: most say nothing, and the seal stays in sight. */
function OwnWords({ value, onValue }: { value: string; onValue: (words: string) => void }) {
  const [asked, setAsked] = useState(false)
  if (!asked && value === '')
    return (
      <div>
        <Button kind="quiet" size="small" onPress={() => setAsked(true)}>
          Add words of your own
        </Button>
      </div>
    )
  return (
    <div ref={asked ? arriveInWords : null}>
      <TextArea
        label="In your own words (may stay empty)"
        rows={2}
        maxLength={300}
        value={value}
        onValue={onValue}
      />
    </div>
  )
}

/** Whoever asked for room to write goes on in it. */
const arriveInWords = (room: HTMLElement | null) => room?.querySelector('textarea')?.focus()

/** Liking alone until it is answered, so that no attribute colours it; then everything. */
function askedNow(questions: readonly Question[], answered: ReadonlySet<string>): Question[] {
  const liking = questions.filter((question) => question.liking)
  const open = liking.some(({ responseId }) => !answered.has(responseId))
  return open ? liking : [...questions]
}
