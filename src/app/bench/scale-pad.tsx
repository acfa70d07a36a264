import { useId } from 'react'
import { Button } from '@/app/kit/button.tsx'
import type { AnswerScale, Response } from '@/core/trial/response.ts'
import styles from './bench.module.css'

interface ScalePadProps {
  response: Response
  value: number | null
  onPick: (value: number) => Promise<void>
}

/** An anchored scale as big keys: a press is the answer, another press mends it. */
export function ScalePad({ response, value, onPick }: ScalePadProps) {
  const id = useId()
  const { points, low, high } = endsOf(response.scale)
  return (
    <fieldset className={styles.pad} aria-describedby={`${id}-ends`}>
      <legend>{response.name}</legend>
      <div className={styles.keys}>
        {Array.from({ length: points }, (_, index) => index + 1).map((point) => (
          <Button
            key={point}
            size="bench"
            pressed={point === value}
            label={`${response.name}: ${point}`}
            onPress={() => onPick(point)}
          >
            {point}
          </Button>
        ))}
      </div>
      <p id={`${id}-ends`} className={styles.ends}>
        <span>1 {low}</span>
        <span>
          {high} {points}
        </span>
      </p>
    </fieldset>
  )
}

function endsOf(scale: AnswerScale): { points: number; low: string; high: string } {
  if (scale.kind === 'just-about-right') return { points: 5, low: scale.low, high: scale.high }
  const anchors = scale.kind === 'nine-point' ? scale.anchors : []
  const at = (point: number) => anchors.find((anchor) => anchor.at === point)?.text ?? ''
  return { points: 9, low: at(1), high: at(9) }
}
