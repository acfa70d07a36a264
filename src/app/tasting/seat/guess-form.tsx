import { useState } from 'react'
import { Button } from '@/app/kit/press/button.tsx'
import type { Seat } from './seat.ts'
import { SeatPage } from './seat-page.tsx'
import styles from './tasting.module.css'

/** The last question: which one was the usual? It tells whether blinding held. */
export function GuessForm({ seat, leave }: { seat: Seat; leave: React.ReactNode }) {
  const [startedAt] = useState(seat.now)
  const [picked, setPicked] = useState<string | null>(null)
  const codes = seat.view.servings.map(({ code }) => code)
  return (
    <SeatPage
      title="Which was the usual one?"
      titleLook="words"
      name={seat.name}
      progress="last question"
      leave={leave}
      foot={
        <>
          <Button size="bench" onPress={() => seat.sealGuess(null, startedAt)}>
            No idea
          </Button>
          {picked === null ? null : (
            <Button size="bench" kind="primary" onPress={() => seat.sealGuess(picked, startedAt)}>
              Seal this guess
            </Button>
          )}
        </>
      }
    >
      <p>
        One of the samples may be what this kitchen always bakes. A guess is as welcome as no idea.
      </p>
      <div className={styles.seats}>
        {codes
          .toSorted((one, other) => one.localeCompare(other))
          .map((code) => (
            <Button
              key={code}
              size="bench"
              pressed={picked === code}
              onPress={() => setPicked(code)}
            >
              {code}
            </Button>
          ))}
      </div>
    </SeatPage>
  )
}
