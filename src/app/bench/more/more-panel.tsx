import { useState } from 'react'
import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import { BenchFoot } from '@/app/bench/bench-foot.tsx'
import { nextOnLine, runOf } from '@/app/bench/day/next-on-line.ts'
import type { BenchUnit } from '@/app/bench/entries/entry-props.ts'
import { useEntryKeys } from '@/app/bench/entries/use-entry-keys.ts'
import { LineMark } from '@/app/bench/line-mark.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { landing } from '@/app/kit/press/keep-focus.ts'
import type { AgendaItem } from '@/core/session/agenda.ts'
import { oneMore } from '@/core/session/matching/match.ts'
import { type EntryKind, entryNames } from '@/core/session/press/entry-kinds.ts'
import type { BenchEntry } from '@/core/session/press/new-event.ts'
import { skipPress, stepPress } from '@/core/session/press/step-press.ts'
import type { StepRun } from '@/core/session/step-runs.ts'
import { stepText } from '@/core/wording/bench/event-text.ts'
import { MakeAgain } from './make-again.tsx'

interface MorePanelProps {
  item: AgendaItem | null
  unit: BenchUnit
  runs: readonly StepRun[]
  onEnter: (kind: EntryKind) => void
  onClose: () => void
}

/** Everything that can be logged of the dough in front, and what is rarer than the main press: one step more, one left out. */
export function MorePanel({ item, unit, runs, onEnter, onClose }: MorePanelProps) {
  const { log } = useBench()
  const keys = useEntryKeys(item, unit)
  const rare = useRarePresses(item, runs)
  const [again, setAgain] = useState(false)
  return (
    <>
      <section className={styles.panel} aria-label="More to log">
        <div className={styles.panelHead}>
          <LineMark unit={unit} />
          <h2 {...landing}>More to log</h2>
        </div>
        {again ? (
          <MakeAgain unit={unit} onDone={onClose} onLeave={() => setAgain(false)} />
        ) : (
          <>
            <div className={styles.pair}>
              {keys.map((kind) => (
                <Button key={kind} size="bench" onPress={() => onEnter(kind)}>
                  {entryNames[kind]}
                </Button>
              ))}
            </div>
            <div className={styles.entry}>
              {rare.map(({ words, press }) => (
                <Button
                  key={words}
                  size="bench"
                  means={words}
                  onPress={() => {
                    onClose()
                    return log(...press)
                  }}
                >
                  {words}
                </Button>
              ))}
              {unit.kind === 'batch' ? (
                <Button size="bench" onPress={() => setAgain(true)}>
                  This dough failed
                </Button>
              ) : null}
            </div>
          </>
        )}
      </section>
      <BenchFoot>
        <Button kind="primary" size="bench" onPress={onClose}>
          Back
        </Button>
      </BenchFoot>
    </>
  )
}

/** What is rarer than the main press of the step in front. */
function useRarePresses(
  item: AgendaItem | null,
  runs: readonly StepRun[],
): { words: string; press: BenchEntry[] }[] {
  const { session, plan, events } = useBench()
  if (!item) return []
  const { step, unit, repeat, do: what, handsOn } = item
  const name = stepText(plan, step.id, repeat)
  const line = runs.filter(({ unit: of }) => of.id === unit.id)
  const bakes = step.kind === 'bake'
  const last = line.findLast(
    ({ startedAt, step: { kind } }) => startedAt !== null && kind === 'fold',
  )
  const passed =
    last &&
    line
      .slice(line.indexOf(last) + 1)
      .some(({ startedAt, step: { id } }) => id !== last.step.id && startedAt !== null)
  const next = nextOnLine(runs, item)
  const browned = events.some(({ kind, about }) => kind === 'browned' && about.id === unit.id)
  const found: { words: string; press: BenchEntry[]; when: boolean }[] = [
    {
      words: 'Done, and nothing begins yet',
      press: stepPress(session, item, events),
      when:
        what === 'end' &&
        !handsOn &&
        !bakes &&
        next !== null &&
        next.step.kind !== 'bake' &&
        !waitsOn(item, runs),
    },
    { words: `Skip ${name}`, press: skipPress(item), when: what === 'start' && !bakes },
    {
      words: 'First browning',
      press: [{ kind: 'browned', about: unit }],
      when: bakes && what === 'end' && !browned,
    },
    {
      words: last ? `One more ${last.step.name}` : '',
      press: last ? oneMore(last.unit, last.step.id, line) : [],
      when: last !== undefined && !passed && unit.kind === 'batch',
    },
  ]
  return found.filter(({ when }) => when)
}

/** Whether a rest still runs: it is ended by the main press, which asks first. */
function waitsOn(item: AgendaItem, runs: readonly StepRun[]): boolean {
  const run = runOf(runs, item)
  return (run?.step.waitSeconds ?? 0) > 0 && (item.lateSeconds ?? 0) < 0
}
