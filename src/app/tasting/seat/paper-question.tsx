import type { Question } from '@/core/seal/blind/blind-view.ts'
import { pointsOf } from '@/core/seal/blind/check-answers.ts'
import styles from './paper-ballots.module.css'

/** One question of a paper ballot: points to ring with the words of their ends, or a line to write on. */
export function PaperQuestion({ question }: { question: Question }) {
  const { name, scale } = question
  const points = pointsOf(scale)
  if (!points)
    return (
      <p className={styles.question}>
        <b>{name}</b>
        <span className={styles.blank}>{scale.kind === 'measured' ? scale.unitOfMeasure : ''}</span>
      </p>
    )
  const count = points.most - points.least + 1
  return (
    <div className={styles.question}>
      <b>{name}</b>
      <div className={styles.scale}>
        <ol className={styles.points}>
          {Array.from({ length: count }, (_, index) => points.least + index).map((point) => (
            <li key={point}>{point}</li>
          ))}
        </ol>
        <p className={styles.ends}>
          <span>{endOf(scale, points.least)}</span>
          <span>{endOf(scale, points.most)}</span>
        </p>
      </div>
    </div>
  )
}

function endOf(scale: Question['scale'], point: number): string {
  switch (scale.kind) {
    case 'nine-point':
      return scale.anchors.find(({ at }) => at === point)?.text ?? ''
    case 'just-about-right':
      return point === 1 ? scale.low : scale.high
    case 'measured':
      return ''
  }
}
