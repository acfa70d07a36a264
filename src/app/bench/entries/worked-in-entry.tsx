import { useState } from 'react'
import { useBench } from '@/app/bench/bench-context.ts'
import { Choice } from '@/app/kit/field/choice.tsx'
import type { EventOf } from '@/core/session/event-record.ts'
import { workedInName } from '@/core/wording/bench/event-text.ts'
import { amountCheck } from './amount-checks.ts'
import type { EntryProps } from './entry-props.ts'
import { NumberEntry } from './number-entry.tsx'

type WorkedIn = EventOf<'worked-in'>['what']
const choices: WorkedIn[] = ['dusting-flour', 'hand-water', 'oil']

/** What went into the dough while it was handled: it moves the level, so it is weighed (the dredger before and after). */
export function WorkedInEntry({ unit, onKept }: EntryProps) {
  const { log } = useBench()
  const [what, setWhat] = useState<WorkedIn>('dusting-flour')
  return (
    <NumberEntry
      label={`Mass of ${workedInName(what)}`}
      unit="g"
      hint="Weigh the dredger, bowl or bottle before and after."
      check={amountCheck.grams}
      draftName={`worked-in/${unit.id}`}
      onKeep={async (grams) => {
        const kept = await log({ kind: 'worked-in', about: unit, what, grams })
        if (kept) onKept()
        return kept
      }}
    >
      <Choice
        label="What was worked in"
        value={what}
        options={choices.map((each) => ({ value: each, label: workedInName(each) }))}
        onValue={setWhat}
        size="bench"
        row
      />
    </NumberEntry>
  )
}
