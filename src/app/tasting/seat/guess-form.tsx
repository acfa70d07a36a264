import { useState } from 'react'
import { arrowsAmong } from '@/app/kit/press/arrows-among.ts'
import { Button } from '@/app/kit/press/button.tsx'
import type { BlindGuess } from '@/core/seal/blind/blind-view.ts'
import { samplesAtEnd } from '@/core/seal/blind/samples-at-end.ts'
import { guessWords } from '@/core/wording/tasting/alone-text.ts'
import { servingName } from '@/core/wording/tasting/serving-name.ts'
import type { Seat } from './seat.ts'
import { SeatPage } from './seat-page.tsx'
import styles from './tasting.module.css'

interface GuessFormProps {
  seat: Seat
  guess: BlindGuess
  leave: React.ReactNode
}

/** The last question: which one was the usual, or had most of what was changed? It tells whether blinding held. */
export function GuessForm({ seat, guess, leave }: GuessFormProps) {
  const [startedAt] = useState(seat.now)
  const [picked, setPicked] = useState<string | null>(null)
  const { title, asks } = guessWords(guess)
  const [done, setDone] = useState(false)
  const offered = samplesAtEnd(seat.view.servings)
  const seal = async (code: string | null) => {
    await seat.sealGuess(code, startedAt)
    setDone(true)
  }
  if (done)
    return (
      <SeatPage title={title} titleLook="words" name={seat.name} progress="last question">
        <p role="status">Sealed.</p>
      </SeatPage>
    )
  return (
    <SeatPage
      title={title}
      titleLook="words"
      name={seat.name}
      progress="last question"
      leave={leave}
      foot={
        <>
          <Button size="bench" onPress={() => seal(null)}>
            No idea
          </Button>
          {picked === null ? null : (
            <Button size="bench" kind="primary" onPress={() => seal(picked)}>
              Seal this guess
            </Button>
          )}
        </>
      }
    >
      <p>{asks}</p>
      <div ref={arrowsAmong} className={styles.seats}>
        {offered.map((each) => (
          <Button
            key={each.code}
            size="bench"
            pressed={picked === each.code}
            onPress={() => setPicked(each.code)}
          >
            {servingName(each)}
          </Button>
        ))}
      </div>
    </SeatPage>
  )
}
