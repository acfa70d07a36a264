import { useState } from 'react'
import { useBench } from '@/app/bench/bench-context.ts'
import { OddReading } from '@/app/bench/entries/odd-reading.tsx'
import { useTemperatureText } from '@/app/kit/field/temperature-unit.ts'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import type { AgendaItem } from '@/core/session/agenda.ts'
import { earlyEnd } from '@/core/session/press/early-end.ts'
import { lateEnd } from '@/core/session/press/late-end.ts'
import type { BenchEntry } from '@/core/session/press/new-event.ts'
import { handsOffPress, skipPress, stepPress } from '@/core/session/press/step-press.ts'
import type { StepRun } from '@/core/session/step-runs.ts'
import { earlyEndText } from '@/core/wording/bench/early-end-text.ts'
import { stepText } from '@/core/wording/bench/event-text.ts'
import { doneText } from '@/core/wording/plan/ends-by-text.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'
import { LateEndEntry } from './late-end-entry.tsx'

interface StepPressesProps {
  item: AgendaItem
  runs: readonly StepRun[]
  run: StepRun | undefined
  /** What follows on the same dough or piece: one press ends this step and begins that one. */
  next: StepRun | null
}

/** A rest that is to be ended before its time: what it costs, and the press that waits for a second word. */
interface Asked {
  cost: string
  press: readonly BenchEntry[]
}

/** The presses of the step in front. The work ends by hands off, the rest by Done; ending a rest early asks once. */
export function StepPresses({ item, runs, run, next }: StepPressesProps) {
  const { log, plan, session, events } = useBench()
  const { now } = useServices()
  const degrees = useTemperatureText()
  const [asked, setAsked] = useState<Asked | null>(null)
  const [late, setLate] = useState<readonly BenchEntry[] | null>(null)
  const { step, handsOn } = item
  const ending = item.do === 'end'
  const stepKey = `${item.unit.id}/${step.id}/${item.repeat}`
  const isBake = step.kind === 'bake'
  const end = (...press: BenchEntry[]) => {
    if (run && lateEnd(run, now()) !== null) {
      setLate(press)
      return undefined
    }
    const early = run ? earlyEnd(run, runs, now()) : null
    if (!early) return log(...press)
    setAsked({ cost: earlyEndText(early, session), press })
    return undefined
  }
  const plannedAt = run ? lateEnd(run, now()) : null
  if (late && run && run.startedAt !== null && plannedAt !== null)
    return (
      <LateEndEntry
        beganAt={run.startedAt}
        plannedAt={plannedAt}
        stepKey={stepKey}
        onEnd={async (at) => {
          if (await log(...late.map((entry) => endedAt(entry, at)))) setLate(null)
        }}
      />
    )
  if (asked) {
    return (
      <>
        <OddReading words={{ mend: 'The rest is not over.', beside: asked.cost }} />
        <Button
          kind="primary"
          size="bench"
          means={`rest on/${stepKey}`}
          onPress={() => setAsked(null)}
        >
          Let it rest
        </Button>
        <Button
          size="bench"
          means={`end early/${stepKey}`}
          onPress={async () => {
            await log(...asked.press)
            setAsked(null)
          }}
        >
          End the rest now
        </Button>
      </>
    )
  }
  if (handsOn) {
    return (
      <>
        <Button
          kind="primary"
          size="bench"
          means={`hands off/${stepKey}`}
          onPress={() => log(...handsOffPress(item))}
        >
          Hands off: {durationText(step.waitSeconds)} of rest begin
        </Button>
        <Button
          kind="quiet"
          size="bench"
          means={`end/${stepKey}`}
          onPress={() => end(...stepPress(session, item, events))}
        >
          Done without its rest
        </Button>
      </>
    )
  }
  return (
    <>
      <Button
        kind="primary"
        size="bench"
        means={`${item.do}/${stepKey}`}
        onPress={() =>
          ending
            ? end(...stepPress(session, item, events))
            : log(...stepPress(session, item, events))
        }
      >
        {pressText(item, degrees)}
      </Button>
      {ending && next && !isBake && next.step.kind !== 'bake' ? (
        <Button
          size="bench"
          means={`end-and-next/${stepKey}`}
          onPress={() =>
            end(
              ...stepPress(session, item, events),
              ...stepPress(session, { ...next, do: 'start' }, events),
            )
          }
        >
          Done, and {stepText(plan, next.step.id, next.repeat)} begins
        </Button>
      ) : null}
      {!ending && !isBake ? (
        <Button
          kind="quiet"
          size="bench"
          means={`skip/${stepKey}`}
          onPress={() => log(...skipPress(item))}
        >
          Skip {stepText(plan, step.id, item.repeat)}
        </Button>
      ) : null}
    </>
  )
}

/** The end of a press at the moment it is said to have been; what the press begins, begins now. */
function endedAt(entry: BenchEntry, at: number | null): BenchEntry {
  const ends = entry.kind === 'step-stopped' || entry.kind === 'bake-out'
  return ends && at !== null ? { ...entry, at } : entry
}

function pressText({ step, do: what }: AgendaItem, degrees: (celsius: number) => string): string {
  if (step.kind === 'bake') return what === 'start' ? 'Into the oven' : 'Out of the oven'
  return what === 'start' ? 'Begin' : doneText(step, degrees)
}
