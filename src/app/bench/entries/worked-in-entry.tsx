import { useState } from 'react'
import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import { PadEntry } from '@/app/bench/pad/pad-entry.tsx'
import { massEntry } from '@/app/kit/field/mass-entry.ts'
import { Button } from '@/app/kit/press/button.tsx'
import { landing } from '@/app/kit/press/keep-focus.ts'
import type { EventOf } from '@/core/session/event-record.ts'
import { workedInName } from '@/core/wording/bench/event-text.ts'
import { amountCheck } from './amount-checks.ts'
import { BackPress } from './back-press.tsx'
import type { EntryProps } from './entry-props.ts'

type WorkedIn = EventOf<'worked-in'>['what']
const choices: WorkedIn[] = ['dusting-flour', 'hand-water', 'oil']
const short: Record<WorkedIn, string> = {
  'dusting-flour': 'Flour',
  'hand-water': 'Water',
  oil: 'Oil',
}

/** What went into the dough while it was handled: it moves the level, so it is weighed (the dredger before and after). */
export function WorkedInEntry({ unit, onKept }: EntryProps) {
  const { log } = useBench()
  const entry = massEntry()
  const [what, setWhat] = useState<WorkedIn>('dusting-flour')
  return (
    <PadEntry
      label={`Mass of ${workedInName(what)}`}
      unit={entry.unit}
      hint="Weigh the dredger, bowl or bottle before and after."
      check={entry.check(amountCheck.grams)}
      draftName={entry.draftKey(`worked-in/${unit.id}`)}
      beside={<BackPress onPress={onKept} />}
      onKeep={async (typed) => {
        const grams = entry.grams(typed)
        const kept = await log({ kind: 'worked-in', about: unit, what, grams })
        if (kept) onKept()
        return kept
      }}
    >
      <h2 className={styles.unseen} {...landing}>
        Worked in
      </h2>
      <fieldset className={styles.several} aria-label="What was worked in">
        {choices.map((each) => (
          <Button
            key={each}
            size="bench"
            pressed={each === what}
            label={workedInName(each)}
            onPress={() => setWhat(each)}
          >
            {short[each]}
          </Button>
        ))}
      </fieldset>
    </PadEntry>
  )
}
