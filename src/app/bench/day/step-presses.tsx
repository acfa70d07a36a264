import { useBench } from '@/app/bench/bench-context.ts'
import { BenchFoot } from '@/app/bench/bench-foot.tsx'
import { OddReading } from '@/app/bench/entries/odd-reading.tsx'
import { useTemperatureText } from '@/app/kit/field/temperature-unit.ts'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import type { AgendaItem } from '@/core/session/agenda.ts'
import type { BenchEntry } from '@/core/session/press/new-event.ts'
import { handsOffPress, stepPress } from '@/core/session/press/step-press.ts'
import { earlyEnd, lateEnd } from '@/core/session/press/untimely-end.ts'
import type { StepRun } from '@/core/session/step-runs.ts'
import { earlyEndText } from '@/core/wording/bench/early-end-text.ts'
import { stepText } from '@/core/wording/bench/event-text.ts'
import { doneText } from '@/core/wording/plan/ends-by-text.ts'
import { LateEndEntry } from './late-end-entry.tsx'

/** What is asked before an end is logged: a rest that is not over, with what it costs; an end hours late, with its time. */
export type Asked =
  | { why: 'early'; cost: string; press: readonly BenchEntry[] }
  | {
      why: 'late'
      beganAt: number
      handsOffAt: number | null
      plannedAt: number
      /** The typed moment; undefined while none stands that can be. */
      at: number | undefined
      press: readonly BenchEntry[]
    }

interface AskedProps {
  asked: Asked | null
  onAsked: (asked: Asked | null) => void
}

interface StepPressesProps extends AskedProps {
  /** The oven has a place and nothing waits for it: what is proved goes in by the press that ends its proof. */
  mayLaunch: boolean
  item: AgendaItem
  runs: readonly StepRun[]
  run: StepRun | undefined
  /** What follows on the same dough or piece: one press ends this step and begins that one. */
  next: StepRun | null
}

/** What is asked stands where the log's presses stood. */
export function AskedEnd({ asked, onAsked }: Pick<AskedProps, 'onAsked'> & { asked: Asked }) {
  if (asked.why === 'late')
    return (
      <LateEndEntry
        beganAt={asked.beganAt}
        handsOffAt={asked.handsOffAt}
        plannedAt={asked.plannedAt}
        onMoment={(at) => onAsked({ ...asked, at })}
      />
    )
  return <OddReading words={{ mend: 'The rest is not over.', beside: asked.cost }} />
}

/** The main press of the step in front. The work ends by hands off, the rest by Done; ending a rest early asks once. */
export function StepPresses({
  item,
  runs,
  run,
  next,
  mayLaunch,
  asked,
  onAsked,
}: StepPressesProps) {
  const { log, plan, session, events } = useBench()
  const { now } = useServices()
  const degrees = useTemperatureText()
  const stepKey = `${item.unit.id}/${item.step.id}/${item.repeat}`
  const plannedAt = run ? lateEnd(run, now()) : null
  const end = (...press: BenchEntry[]) => {
    if (run && plannedAt !== null && run.startedAt !== null) {
      const { startedAt: beganAt, handsOffAt } = run
      onAsked({ why: 'late', beganAt, handsOffAt, plannedAt, at: undefined, press })
      return undefined
    }
    const early = run ? earlyEnd(run, runs, now()) : null
    if (!early) return log(...press)
    onAsked({ why: 'early', cost: earlyEndText(early, session), press })
    return undefined
  }
  const answered = async (...press: readonly BenchEntry[]) => {
    if (await log(...press)) onAsked(null)
  }
  if (asked?.why === 'late')
    return (
      <BenchFoot
        beside={
          <Button
            size="bench"
            means={`end just now/${stepKey}`}
            onPress={() => answered(...asked.press)}
          >
            <span>It ended just now</span>
          </Button>
        }
      >
        <Button
          kind="primary"
          size="bench"
          means={`late end/${stepKey}`}
          disabled={asked.at === undefined}
          onPress={() => answered(...asked.press.map((entry) => endedAt(entry, asked.at)))}
        >
          It ended then
        </Button>
      </BenchFoot>
    )
  if (asked)
    return (
      <BenchFoot
        beside={
          <Button
            size="bench"
            means={`end early/${stepKey}`}
            onPress={() => answered(...asked.press)}
          >
            <span>End the rest now</span>
          </Button>
        }
      >
        <Button
          kind="primary"
          size="bench"
          means={`rest on/${stepKey}`}
          onPress={() => onAsked(null)}
        >
          Let it rest
        </Button>
      </BenchFoot>
    )
  if (item.handsOn)
    return (
      <BenchFoot>
        <Button
          kind="primary"
          size="bench"
          means={`hands off/${stepKey}`}
          onPress={() => log(...handsOffPress(item))}
        >
          Hands off
        </Button>
      </BenchFoot>
    )
  const ending = item.do === 'end'
  const launches = ending && next !== null && next.step.kind === 'bake' && mayLaunch
  const goesOn = ending && next && (next.step.kind !== 'bake' || launches)
  const own = stepPress(session, item, events)
  return (
    <BenchFoot>
      <Button
        kind="primary"
        size="bench"
        means={goesOn ? `end-and-next/${stepKey}` : `${item.do}/${stepKey}`}
        onPress={() => {
          if (!ending) return log(...own)
          return goesOn
            ? end(...own, ...stepPress(session, { ...next, do: 'start' }, events))
            : end(...own)
        }}
      >
        <span>
          {launches ? `Launch ${item.letter}` : mainText(item, run, degrees)}
          {launches ? (
            <small> ends {stepText(plan, item.step.id, item.repeat)}</small>
          ) : goesOn ? (
            <small> and {stepText(plan, next.step.id, next.repeat)} begins</small>
          ) : null}
        </span>
      </Button>
    </BenchFoot>
  )
}

/** The end of a press at the moment it is said to have been; what the press begins, begins now. */
function endedAt(entry: BenchEntry, at: number | undefined): BenchEntry {
  const ends = entry.kind === 'step-stopped' || entry.kind === 'bake-out'
  return ends && at !== undefined ? { ...entry, at } : entry
}

function mainText(
  { step, do: what }: AgendaItem,
  run: StepRun | undefined,
  degrees: (celsius: number) => string,
): string {
  if (what === 'start') return 'Begin'
  return run && run.handsOffAt !== null ? 'Rest over' : doneText(step, degrees)
}
