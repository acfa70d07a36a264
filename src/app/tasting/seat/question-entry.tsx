import { NumberField } from '@/app/kit/field/number-field.tsx'
import { ScalePad } from '@/app/kit/field/scale-pad.tsx'
import { TextField } from '@/app/kit/field/text-field.tsx'
import type { Draft } from '@/app/kit/field/use-draft.ts'
import { Button } from '@/app/kit/press/button.tsx'
import type { Question } from '@/core/seal/blind/blind-view.ts'
import type { AnswerTrouble } from '@/core/seal/blind/check-answers.ts'
import { referencesText } from '@/core/wording/tasting/reference-text.ts'
import { skippedField, valueField, whyField } from './ballot-draft.ts'
import styles from './tasting.module.css'

interface QuestionEntryProps {
  question: Question
  draft: Draft
  trouble: AnswerTrouble | undefined
}

const mend: Record<AnswerTrouble['reason'], string> = {
  missing: 'Give an answer, or say why there is none.',
  'needs-why': 'Say in a word why there is no answer.',
  'out-of-range': 'Give a number on the scale.',
  'not-whole': 'Give a whole number.',
  'unknown-response': 'This question is no longer asked.',
  twice: 'Give one answer.',
}

/** One question: its scale as keys (or a number), or the reason why there is no answer. */
export function QuestionEntry({ question, draft, trouble }: QuestionEntryProps) {
  const { name, scale, definition } = question
  const text = draft.values[valueField(question)] ?? ''
  const skipped = draft.values[skippedField(question)] === 'yes'
  const number = text === '' ? null : Number(text.replace(',', '.'))
  const compare = referencesText(scale)
  const message = trouble ? mend[trouble.reason] : undefined
  const leaveOut = () =>
    skipped ? draft.clear(skippedField(question)) : draft.set(skippedField(question), 'yes')
  const take = (value: number | null) =>
    value === null
      ? draft.clear(valueField(question))
      : draft.set(valueField(question), String(value))
  return (
    <div className={styles.question}>
      <LeaveOut name={name} skipped={skipped} onPress={leaveOut} />
      {skipped ? (
        <TextField
          label={`No answer for ${name.toLowerCase()}: why? (may stay empty)`}
          value={draft.values[whyField(question)] ?? ''}
          onValue={(why) => draft.set(whyField(question), why)}
          maxLength={200}
          {...(message ? { problem: message } : {})}
        />
      ) : scale.kind === 'measured' ? (
        <NumberField
          label={name}
          unit={scale.unitOfMeasure}
          value={number}
          onValue={take}
          size="bench"
          {...(message ? { problem: message } : {})}
        />
      ) : (
        <ScalePad name={name} scale={scale} value={number} onPick={take} />
      )}
      {definition === null ? null : <p className={styles.quiet}>{definition}</p>}
      {compare === '' ? null : <p className={styles.quiet}>{compare}</p>}
      {message && !skipped && scale.kind !== 'measured' ? (
        <p className={styles.trouble} role="alert">
          {message}
        </p>
      ) : null}
    </div>
  )
}

/** Slight, at the right of the question: a gap is never silent, and an answer may still be given. */
function LeaveOut(props: { name: string; skipped: boolean; onPress: () => void }) {
  const { name, skipped, onPress } = props
  return (
    <div className={styles.leaveOut}>
      <Button
        kind="quiet"
        size="small"
        pressed={skipped}
        label={`${skipped ? 'answer after all' : 'leave out'}: ${name.toLowerCase()}`}
        onPress={onPress}
      >
        {skipped ? 'answer after all' : 'leave out'}
      </Button>
    </div>
  )
}
