import { useId } from 'react'
import { arrowsAmong } from '@/app/kit/press/arrows-among.ts'
import { Button } from '@/app/kit/press/button.tsx'
import type { AnswerScale } from '@/core/trial/response.ts'
import styles from './scale-pad.module.css'

interface ScalePadProps {
  /** What is asked. */
  name: string
  scale: Exclude<AnswerScale, { kind: 'measured' }>
  value: number | null
  onPick: (value: number) => unknown
}

/** An anchored scale as big keys: a press is the answer, another press mends it. */
export function ScalePad({ name, scale, value, onPick }: ScalePadProps) {
  const id = useId()
  const points = scale.kind === 'nine-point' ? 9 : 5
  const anchor = value === null ? '' : anchorOf(scale, value)
  return (
    <fieldset className={styles.pad} aria-describedby={`${id}-ends`}>
      <legend className={styles.name}>
        {name}
        <span className={styles.anchor}>{anchor}</span>
      </legend>
      <div
        ref={arrowsAmong}
        className={`${styles.keys} ${points === 9 ? styles.nine : styles.five}`}
      >
        {Array.from({ length: points }, (_, index) => index + 1).map((point) => (
          <Button
            key={point}
            size="bench"
            pressed={point === value}
            label={`${name}: ${[point, anchorOf(scale, point)].filter(Boolean).join(', ')}`}
            onPress={() => onPick(point)}
          >
            {point}
          </Button>
        ))}
      </div>
      <p id={`${id}-ends`} className={styles.ends}>
        <span>1 {anchorOf(scale, 1)}</span>
        <span>
          {points} {anchorOf(scale, points)}
        </span>
      </p>
    </fieldset>
  )
}

/** The words beside a point of the scale; empty where it has none. */
function anchorOf(scale: ScalePadProps['scale'], point: number): string {
  if (scale.kind === 'nine-point')
    return scale.anchors.find((anchor) => anchor.at === point)?.text ?? ''
  return { 1: scale.low, 3: 'just about right', 5: scale.high }[point] ?? ''
}
