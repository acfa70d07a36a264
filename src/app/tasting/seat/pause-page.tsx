import { type ReactNode, useState } from 'react'
import { Button } from '@/app/kit/press/button.tsx'
import { useTicking } from '@/app/kit/time/use-ticking.ts'
import type { BlindServing } from '@/core/seal/blind/blind-view.ts'
import { refreshText } from '@/core/wording/tasting/before-first-text.ts'
import { servingInSentence, servingName } from '@/core/wording/tasting/serving-name.ts'
import type { Seat } from './seat.ts'
import { SeatPage } from './seat-page.tsx'
import styles from './tasting.module.css'
import { useBegun } from './use-begun.ts'

interface PausePageProps {
  seat: Seat
  /** What was sealed just before; null where there is nothing. */
  sealed: BlindServing | null
  serving: BlindServing
  restSeconds: number
  /** When the rest began, where that is known; else it begins as the page opens. */
  since?: number | undefined
  progress: string
  leave?: ReactNode
  onHave: () => unknown
}

/** Between two samples: what was sealed, water and bread, and the next code. A ballot that was begun before is gone on with. */
export function PausePage({
  seat,
  sealed,
  serving,
  restSeconds,
  since,
  progress,
  leave,
  onHave,
}: PausePageProps) {
  const { code } = serving
  const name = servingName(serving)
  const begun = useBegun(seat, code, onHave)
  if (begun !== false) return null
  return (
    <SeatPage
      title={name}
      titleLook="next"
      name={seat.name}
      progress={progress}
      leave={leave}
      foot={
        <Button size="bench" kind="primary" onPress={onHave}>
          {name}: I have it
        </Button>
      }
    >
      {sealed === null ? null : <p className={styles.sealedLine}>{servingName(sealed)} sealed</p>}
      <p>
        {refreshText}{' '}
        {serving.plate === undefined
          ? `Next: look for the sample marked ${code}.`
          : `Next: ${servingInSentence(serving)}.`}
      </p>
      <RestLeft seconds={restSeconds} since={since} now={seat.now} />
    </SeatPage>
  )
}

interface RestLeftProps extends Pick<PausePageProps, 'since'> {
  seconds: number
  now: () => number
}

/** What is left of the rest that the plan wants; when it is over, that. */
function RestLeft({ seconds, since, now }: RestLeftProps) {
  const [from] = useState(now)
  const until = (since ?? from) + seconds * 1000
  const left = Math.ceil((until - useTicking(now)) / 1000)
  return (
    <p className={styles.quiet} role="timer">
      {left > 0 ? `Rest for ${left} seconds more.` : 'Rested long enough.'}
    </p>
  )
}
