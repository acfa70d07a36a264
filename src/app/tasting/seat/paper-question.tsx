import type { Question } from '@/core/seal/blind/blind-view.ts'
import { pointsOf } from '@/core/seal/blind/check-answers.ts'
import styles from './paper-ballots.module.css'

/** One question of a paper ballot in one row: points to ring between the words of their ends, or a line to write on. */
export function PaperQuestion({ question }: { question: Question }) {
  const { name, scale } = question
  const points = pointsOf(scale)
  if (!points)
    return (
      <div className={styles.question}>
        <b>{name}</b>
        <span className={styles.blank}>{scale.kind === 'measured' ? scale.unitOfMeasure : ''}</span>
      </div>
    )
  const count = points.most - points.least + 1
  const { low, high } = endsOf(question)
  return (
    <div className={styles.question}>
      <b>{name}</b>
      <span className={styles.low}>{low}</span>
      <ol className={styles.points}>
        {Array.from({ length: count }, (_, index) => points.least + index).map((point) => (
          <li key={point}>{point}</li>
        ))}
      </ol>
      <span className={styles.high}>{high}</span>
    </div>
  )
}

function endsOf({ scale }: Question): { low: string; high: string } {
  if (scale.kind === 'just-about-right') return { low: scale.low, high: scale.high }
  if (scale.kind === 'measured') return { low: '', high: '' }
  const at = (point: number) => scale.anchors.find((anchor) => anchor.at === point)?.text ?? ''
  return { low: at(1), high: at(9) }
}
