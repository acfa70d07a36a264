import { useMemo } from 'react'
import { InlinePress } from '@/app/kit/press/inline-press.tsx'
import { LevelsSection } from '@/app/plan/levels/levels-section.tsx'
import { AskedRow } from '@/app/plan/page/asked-row.tsx'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { useLocked } from '@/app/plan/page/use-locked.ts'
import {
  type AskedPart,
  changeSentence,
  decideSentence,
  type SentencePiece,
} from '@/core/wording/plan/plan-sentences.ts'
import { FactorSection } from './factor-section.tsx'
import { HopedLevel } from './hoped-level.tsx'
import { MainResponse } from './main-response.tsx'
import styles from './plan-sentences.module.css'
import { ExpectationFields, LockedNote } from './question-section.tsx'

/** What is changed and what decides, as two sentences whose values open their fields in place. */
export function PlanSentences() {
  const plan = usePlanPage((page) => page.plan)
  const changes = useMemo(() => changeSentence(plan), [plan])
  const decides = useMemo(() => decideSentence(plan), [plan])
  const locked = useLocked()
  return (
    <div className={styles.sentences}>
      <Sentence pieces={changes} />
      <AskedRow part="plan-factor">
        <FactorSection />
      </AskedRow>
      <AskedRow part="plan-levels">
        <LevelsSection />
      </AskedRow>
      <Sentence pieces={decides} />
      <AskedRow part="plan-main">
        <MainResponse locked={locked} />
        <LockedNote />
      </AskedRow>
      <AskedRow part="plan-expectation">
        <ExpectationFields locked={locked} />
        <LockedNote />
      </AskedRow>
      <AskedRow part="plan-hoped">
        <HopedLevel locked={locked} />
        <LockedNote />
      </AskedRow>
    </div>
  )
}

const partOfValue = {
  factor: 'plan-factor',
  levels: 'plan-levels',
  main: 'plan-main',
  expectation: 'plan-expectation',
  hoped: 'plan-hoped',
} as const satisfies Record<AskedPart, string>

function Sentence({ pieces }: { pieces: readonly SentencePiece[] }) {
  const opened = usePlanPage((page) => page.opened)
  const { turn, jumpTo } = usePlanActions()
  return (
    <p className={styles.sentence}>
      {pieces.map((piece, at) => {
        if (typeof piece === 'string') return piece
        const part = partOfValue[piece.opens]
        const open = opened.includes(part)
        return (
          <InlinePress
            // biome-ignore lint/suspicious/noArrayIndexKey: a piece is its place in the sentence
            key={at}
            expanded={open}
            onPress={() => (open ? turn(part, false) : jumpTo(part))}
          >
            {piece.value}
          </InlinePress>
        )
      })}
    </p>
  )
}
