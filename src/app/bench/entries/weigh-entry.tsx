import { useMemo, useState } from 'react'
import { batchIdOf } from '@/app/bench/batch-id-of.ts'
import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import { LevelWorked } from '@/app/bench/day/level-worked.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { landing } from '@/app/kit/press/keep-focus.ts'
import { oddWeight } from '@/core/session/press/odd-weight.ts'
import { type ToWeigh, toWeigh } from '@/core/session/press/to-weigh.ts'
import { weighPress } from '@/core/session/press/weigh-press.ts'
import { weightsOfBatch } from '@/core/session/weights-of-batch.ts'
import { sheetOfBatch } from '@/core/session/worked-levels.ts'
import { withUnit } from '@/core/units/number-text.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { oddWeightText } from '@/core/wording/bench/odd-weight-text.ts'
import { amountCheck } from './amount-checks.ts'
import type { EntryProps } from './entry-panel.tsx'
import { NumberEntry } from './number-entry.tsx'
import type { OddReadingWords } from './odd-reading.tsx'
import { WeighedList } from './weighed-list.tsx'

/** The weights of the dough in front, one ingredient at a time: one press when the scale shows the plan, else its reading. */
export function WeighEntry({ unit, onKept }: EntryProps) {
  const { whole, session, plan, events } = useBench()
  const [againKey, setAgainKey] = useState<string | null>(null)
  const sheet = useMemo(() => weighSheet(plan, whole.kitchen), [plan, whole.kitchen])
  const batchId = batchIdOf(session, unit)
  const batch = session.batches.find(({ id }) => id === batchId)
  const lines = toWeigh(sheet, batch?.levelId ?? null, batchId, events)
  const logged = weightsOfBatch(events, batchId)
  const open = lines.find((line) =>
    againKey === null ? line.loggedAs !== null && line.logged === null : line.key === againKey,
  )
  const weights = sheetOfBatch(sheet.batches, batch?.levelId ?? null)
  const oddIn = (line: ToWeigh) => (grams: number) => {
    const found = weights && oddWeight({ plan, batch: weights, logged, key: line.key, grams })
    const nameOf = (key: string) => lines.find((each) => each.key === key)?.name ?? ''
    const inUnit = (level: string) => withUnit(level, plan.factor.unitOfMeasure)
    return found ? oddWeightText(found, line.name, nameOf, inUnit) : null
  }
  return (
    <div className={styles.entry}>
      {open ? (
        <OneWeight
          key={open.key}
          line={open}
          batchId={batchId}
          odd={oddIn(open)}
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
        {line.prefermentName ? `, into the ${line.prefermentName}` : ''}
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
