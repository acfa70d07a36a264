import { useState } from 'react'
import { arrowsAmong } from '@/app/kit/press/arrows-among.ts'
import { Button } from '@/app/kit/press/button.tsx'
import type { BlindSet } from '@/core/seal/blind/blind-view.ts'
import { sampleName } from '@/core/wording/tasting/serving-name.ts'
import { tellApartQuestion } from '@/core/wording/tasting/tell-apart-question.ts'
import type { Seat } from './seat.ts'
import { SeatPage } from './seat-page.tsx'
import styles from './tasting.module.css'

interface SetFormProps {
  seat: Seat
  set: BlindSet
  leave: React.ReactNode
}

/** A tell-apart set: its codes, one pick, sealed at once. */
export function SetForm({ seat, set, leave }: SetFormProps) {
  const { codes, offered } = set
  const { tellApart } = seat.view
  const [startedAt] = useState(seat.now)
  const [picked, setPicked] = useState<string | null>(null)
  const [done, setDone] = useState(false)
  const title = codes.map((code) => sampleName(set, code)).join(' · ')
  const seal = async () => {
    if (picked === null) return
    await seat.sealSet(codes, picked, startedAt)
    setDone(true)
  }
  if (done)
    return (
      <SeatPage title={title} titleLook="words" name={seat.name} progress="one set">
        <p role="status">Sealed.</p>
      </SeatPage>
    )
  return (
    <SeatPage
      title={title}
      titleLook="words"
      name={seat.name}
      progress="one set"
      leave={leave}
      foot={
        <Button kind="primary" size="bench" disabled={picked === null} onPress={seal}>
          Seal this answer
        </Button>
      }
    >
      {tellApart ? <p className={styles.lead}>{tellApartQuestion(tellApart)}</p> : null}
      <div ref={arrowsAmong} className={styles.seats}>
        {offered.map((code) => (
          <Button
            key={code}
            size="bench"
            kind={picked === code ? 'primary' : 'plain'}
            pressed={picked === code}
            onPress={() => setPicked(code)}
          >
            {sampleName(set, code)}
          </Button>
        ))}
      </div>
    </SeatPage>
  )
}
