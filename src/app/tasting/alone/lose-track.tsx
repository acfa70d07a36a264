import { Button } from '@/app/kit/press/button.tsx'
import { SeatPage } from '@/app/tasting/seat/seat-page.tsx'
import { useTable } from '@/app/tasting/tasting-context.ts'
import { useTableLog } from '@/app/tasting/use-table-log.ts'
import type { PlateRound } from '@/core/tasting/plates.ts'
import { loseTrackSteps, oneCanShow, plateLooks } from '@/core/wording/tasting/alone-text.ts'
import styles from './alone.module.css'

interface LoseTrackProps {
  round: PlateRound
  /** How many rounds there are. */
  rounds: number
}

/** Before each round: how to plate so that nobody knows which is which, and what one person can show. */
export function LoseTrack({ round, rounds }: LoseTrackProps) {
  const { session } = useTable()
  const log = useTableLog()
  const shuffled = () =>
    log({
      kind: 'plates-shuffled',
      about: { kind: 'session', id: session.id },
      round: round.number,
    })
  return (
    <SeatPage
      title="Lose track of the plates"
      titleLook="words"
      name="Alone at the table"
      progress={`round ${round.number} of ${rounds}`}
      foot={
        <Button size="bench" kind="primary" onPress={shuffled}>
          I have lost track
        </Button>
      }
    >
      <ol className={styles.steps}>
        {loseTrackSteps(round).map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      <p className={styles.soft}>{plateLooks}</p>
      {round.number === 1 ? <p className={styles.soft}>{oneCanShow}</p> : null}
    </SeatPage>
  )
}
