import { useState } from 'react'
import { batchIdOf } from '@/app/bench/batch-id-of.ts'
import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import { LevelWorked } from '@/app/bench/day/level-worked.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { landing } from '@/app/kit/press/keep-focus.ts'
import type { ToWeigh } from '@/core/session/press/to-weigh.ts'
import { weighPress } from '@/core/session/press/weigh-press.ts'
import { amountCheck } from './amount-checks.ts'
import type { EntryProps } from './entry-props.ts'
import { NumberEntry } from './number-entry.tsx'
import type { OddReadingWords } from './odd-reading.tsx'
import { useOddWeight } from './use-odd-weight.ts'
import { WeighedList } from './weighed-list.tsx'

/** The weights of the dough in front, one ingredient at a time: one press when the scale shows the plan, else its reading. */
export function WeighEntry({ unit, onKept }: EntryProps) {
  const { session } = useBench()
  const [againKey, setAgainKey] = useState<string | null>(null)
  const batchId = batchIdOf(session, unit)
  const { lines, oddIn } = useOddWeight(batchId)
  const open = lines.find((line) =>
    againKey === null ? line.loggedAs !== null && line.logged === null : line.key === againKey,
  )
  return (
    <div className={styles.entry}>
      {open ? (
        <OneWeight
          key={open.key}
          line={open}
          batchId={batchId}
          odd={(grams) => oddIn(open, grams)}
          onKept={() => setAgainKey(null)}
        />
      ) : (
        <>
          <p className={styles.nowTitle} {...landing}>
            All weighed
          </p>
          <Button size="bench" kind="primary" onPress={onKept}>
            Back to the bench
          </Button>
        </>
      )}
      <LevelWorked batchId={batchId} />
      <WeighedList lines={lines} openKey={open?.key ?? null} onAgain={setAgainKey} />
    </div>
  )
}

interface OneWeightProps {
  line: ToWeigh
  batchId: string
  odd: (grams: number) => OddReadingWords | null
  onKept: () => void
}

function OneWeight({ line, batchId, odd, onKept }: OneWeightProps) {
  const { log } = useBench()
  const keep = async (grams: number) => {
    const kept = await log(...weighPress(line, batchId, grams))
    if (kept) onKept()
    return kept
  }
  return (
    <>
      <p className={styles.due} {...landing}>
        {line.name}
      </p>
      <Button
        size="bench"
        kind="primary"
        means={`weigh/${batchId}/${line.key}`}
        onPress={() => keep(line.grams)}
      >
        The scale shows {line.text}
      </Button>
      <NumberEntry
        label="It shows something else"
        unit="g"
        check={amountCheck.grams}
        odd={odd}
        draftName={`weigh/${batchId}/${line.key}`}
        onKeep={keep}
        quiet
      />
    </>
  )
}
