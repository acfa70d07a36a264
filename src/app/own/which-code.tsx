import { useLiveQuery } from 'dexie-react-hooks'
import { useState } from 'react'
import { Switch } from '@/app/kit/field/switch.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import { SeatPage } from '@/app/tasting/seat/seat-page.tsx'
import styles from '@/app/tasting/seat/tasting.module.css'
import { isBegun } from './ballot-moves.ts'

interface WhichCodeProps {
  name: string
  /** Those that are not sealed, rising. */
  codes: readonly string[]
  done: number
  /** The code that was on the screen, and under what its unfinished ballot is kept; null where there was none. */
  from: { code: string; keptUnder: string } | null
  /** `along`: what was pressed under the code that was on the screen is about this one. */
  onCode: (code: string, along: boolean) => Promise<void>
}

/** The codes that may stand on the plate: one press goes to its ballot. What was pressed under another waits there or comes along. */
export function WhichCode({ name, codes, done, from, onCode }: WhichCodeProps) {
  const { notebook } = useServices()
  const [along, setAlong] = useState(false)
  const draft = useLiveQuery(
    async () => (from ? await notebook.draft(from.keptUnder) : undefined),
    [notebook, from?.keptUnder],
  )
  const begun = from !== null && isBegun(draft)
  return (
    <SeatPage
      title="Which code is on your plate?"
      titleLook="words"
      name={name}
      progress={`${done} of ${done + codes.length} done`}
    >
      {begun ? (
        <Switch
          label={`What I pressed for ${from.code} was about this plate`}
          hint={`Else it waits under ${from.code}.`}
          on={along}
          onSwitch={setAlong}
        />
      ) : null}
      <div className={styles.seats}>
        {codes.map((code) => (
          <Button key={code} size="bench" onPress={() => onCode(code, begun && along)}>
            {code}
          </Button>
        ))}
      </div>
    </SeatPage>
  )
}
