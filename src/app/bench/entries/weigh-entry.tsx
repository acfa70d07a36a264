import { useState } from 'react'
import { batchIdOf } from '@/app/bench/batch-id-of.ts'
import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import { BenchFoot } from '@/app/bench/bench-foot.tsx'
import { LevelWorked } from '@/app/bench/day/level-worked.tsx'
import look from '@/app/bench/day/now.module.css'
import { PadEntry } from '@/app/bench/pad/pad-entry.tsx'
import { massEntry } from '@/app/kit/field/mass-entry.ts'
import { WarningMark } from '@/app/kit/look/warning-mark.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { landing } from '@/app/kit/press/keep-focus.ts'
import { batchOf } from '@/core/session/line.ts'
import type { ToWeigh } from '@/core/session/press/to-weigh.ts'
import { weighPress } from '@/core/session/press/weigh-press.ts'
import { exactMass } from '@/core/units/mass-text.ts'
import { differenceText } from '@/core/wording/bench/odd-weight-text.ts'
import { amountCheck } from './amount-checks.ts'
import type { EntryProps } from './entry-props.ts'
import type { OddReadingWords } from './odd-reading.tsx'
import { useOddWeight } from './use-odd-weight.ts'
import weigh from './weigh.module.css'
import { WeighedList } from './weighed-list.tsx'

/** The weights of the dough in front, one ingredient at a time: one press when the scale shows the plan, else its reading. */
export function WeighEntry({ unit, onKept }: EntryProps) {
  const { session } = useBench()
  const [againKey, setAgainKey] = useState<string | null>(null)
  const batchId = batchIdOf(session, unit)
  const { lines, oddIn } = useOddWeight(batchId)
  const left = lines.filter((line) => line.loggedAs !== null && line.logged === null)
  const open = againKey === null ? left[0] : lines.find((line) => line.key === againKey)
  const list = (
    <>
      <LevelWorked batchId={batchId} />
      <CupToPour batchId={batchId} />
      <WeighedList lines={lines} openKey={open?.key ?? null} onAgain={setAgainKey} />
    </>
  )
  if (!open)
    return (
      <div className={styles.entry}>
        <p className={look.nowTitle} {...landing}>
          All weighed
        </p>
        {list}
        <BenchFoot>
          <Button size="bench" kind="primary" onPress={onKept}>
            Back to the bench
          </Button>
        </BenchFoot>
      </div>
    )
  return (
    <OneWeight
      key={open.key}
      line={open}
      batchId={batchId}
      odd={(grams) => oddIn(open, grams)}
      onKept={() => {
        setAgainKey(null)
        // With the last weight in, the dough is what comes next.
        if (left.length === 1 && left[0]?.key === open.key) onKept()
      }}
      onBack={onKept}
      below={list}
    />
  )
}

/** Beside the weights of a dough whose level nobody knows: its cup goes in whole. */
function CupToPour({ batchId }: { batchId: string }) {
  const { session, unknown } = useBench()
  if (!unknown) return null
  return (
    <p>
      <b>And cup {batchOf(session, batchId).letter}: all of it.</b> Do not weigh it, nor the dough.
    </p>
  )
}

interface OneWeightProps {
  line: ToWeigh
  batchId: string
  odd: (grams: number) => OddReadingWords | null
  onKept: () => void
  onBack: () => void
  below: React.ReactNode
}

function OneWeight({ line, batchId, odd, onKept, onBack, below }: OneWeightProps) {
  const { log } = useBench()
  const entry = massEntry()
  const keep = async (grams: number) => {
    const kept = await log(...weighPress(line, batchId, grams))
    if (kept) onKept()
    return kept
  }
  return (
    <PadEntry
      label="On the scale"
      unit={entry.unit}
      check={entry.check(amountCheck.grams)}
      odd={(typed) => odd(entry.grams(typed))}
      says={(typed) => {
        const grams = entry.grams(typed)
        const { words, off } = differenceText(grams, line.grams)
        return off && odd(grams) !== null ? (
          <p className={styles.late}>
            <WarningMark /> {words}
          </p>
        ) : (
          <p>{words}</p>
        )
      }}
      draftName={entry.draftKey(`weigh/${batchId}/${line.key}`)}
      planned={{
        value: exactMass(line.grams),
        words: `The scale shows ${line.text}`,
        means: `weigh/${batchId}/${line.key}`,
      }}
      onKeep={(typed) => keep(entry.grams(typed))}
      below={below}
    >
      <div className={weigh.target}>
        <Button size="bench" label="Back" means="back" onPress={onBack}>
          <svg aria-hidden="true" width="10" height="18" viewBox="0 0 10 18" fill="none">
            <path d="M9 1L1 9l8 8" stroke="currentColor" strokeWidth="2.4" />
          </svg>
        </Button>
        <p className={weigh.what} {...landing}>
          {line.name}
        </p>
        <p className={weigh.grams}>{line.text}</p>
      </div>
    </PadEntry>
  )
}
