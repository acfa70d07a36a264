import { useState } from 'react'
import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import { amountCheck } from '@/app/bench/entries/amount-checks.ts'
import { AnswersEntry } from '@/app/bench/entries/answers-entry.tsx'
import { FailureEntry } from '@/app/bench/entries/failure-entry.tsx'
import { NumberEntry } from '@/app/bench/entries/number-entry.tsx'
import { pieceName } from '@/app/bench/line-name.ts'
import { Choice } from '@/app/kit/field/choice.tsx'
import { massEntry } from '@/app/kit/field/mass-entry.ts'
import { Button } from '@/app/kit/press/button.tsx'
import { landing } from '@/app/kit/press/keep-focus.ts'
import { bakes } from '@/core/session/bakes.ts'
import type { EventOf } from '@/core/session/event-record.ts'

type Weighing = EventOf<'mass'>['when']
type Sizing = EventOf<'size'>['what']

const figures = [
  { value: 'in', label: 'Mass in', unit: 'g' },
  { value: 'out', label: 'Mass out', unit: 'g' },
  { value: 'cooled', label: 'Cooled mass', unit: 'g' },
  { value: 'height-in', label: 'Height in', unit: 'mm' },
  { value: 'height-out', label: 'Height out', unit: 'mm' },
  { value: 'volume', label: 'Volume', unit: 'mL' },
] as const satisfies { value: Weighing | Sizing; label: string; unit: string }[]

type Figure = (typeof figures)[number]['value']
const isMass = (figure: Figure): figure is Weighing =>
  figure === 'in' || figure === 'out' || figure === 'cooled'

/** Everything about one piece: into and out of the oven to the second, its masses and sizes, answers and failures. */
export function PieceLog({ pieceId, onBack }: { pieceId: string; onBack: () => void }) {
  const { covered, session, plan, events, log } = useBench()
  const mass = massEntry()
  const [figure, setFigure] = useState<Figure>('in')
  const about = { kind: 'piece' as const, id: pieceId }
  const bake = bakes(session, events).find((each) => each.pieceId === pieceId)
  const step = plan.steps.find(({ kind }) => kind === 'bake')
  const first = step ? { stepId: step.id, repeat: 1 } : {}
  const chosen = figures.find((each) => each.value === figure) ?? figures[0]
  const keepFigure = (value: number) =>
    isMass(figure)
      ? log({ kind: 'mass', about, when: figure, grams: mass.grams(value) })
      : log({ kind: 'size', about, what: figure, value })
  return (
    <div className={styles.entry}>
      <div className={styles.panelHead}>
        <h3 {...landing}>{pieceName(session, covered ? { levels: [] } : plan, pieceId).text}</h3>
        <Button onPress={onBack}>All pieces</Button>
      </div>
      <div className={styles.pair}>
        <Button
          size="bench"
          kind="primary"
          disabled={bake !== undefined && bake.inAt !== null}
          onPress={() => log({ kind: 'bake-in', about, ...first })}
        >
          Into the oven
        </Button>
        <Button
          size="bench"
          kind="primary"
          disabled={!bake || bake.inAt === null || bake.outAt !== null}
          onPress={() => log({ kind: 'bake-out', about, ...first })}
        >
          Out of the oven
        </Button>
      </div>
      <NumberEntry
        label={chosen.label}
        unit={isMass(figure) ? mass.unit : chosen.unit}
        check={isMass(figure) ? mass.check(amountCheck.grams) : amountCheck.size}
        draftName={
          isMass(figure)
            ? mass.draftKey(`figure/${pieceId}/${figure}`)
            : `figure/${pieceId}/${figure}`
        }
        onKeep={keepFigure}
      >
        <Choice
          label="Figure"
          value={figure}
          options={figures}
          onValue={setFigure}
          size="bench"
          row
        />
      </NumberEntry>
      <AnswersEntry unit={about} onKept={onBack} />
      <FailureEntry unit={about} onKept={onBack} />
    </div>
  )
}
