import { SelectField } from '@/app/kit/field/select-field.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { RoomFor } from '@/app/plan/field/room-for.tsx'
import { usePlanActions, usePlanStore } from '@/app/plan/page/plan-page-context.ts'
import { withChanges } from '@/core/plan-edits/levels/changes.ts'
import { startedChange } from '@/core/plan-edits/levels/started-change.ts'
import { inLevel } from '@/core/plan-edits/parts/in-part.ts'
import type { Change, Level } from '@/core/trial/level.ts'
import styles from './levels-section.module.css'
import { OptionChange } from './option-change.tsx'

interface Props {
  level: Level
  index: number
}

/** What an option swaps against the plan as written: ingredients, its own water, a tool, a step left out. */
export function OptionChanges({ level, index }: Props) {
  const store = usePlanStore()
  const { change } = usePlanActions()
  const changes = level.changes ?? []
  const set = (next: Change[]) =>
    change((plan) => inLevel(plan, level.id, (each) => withChanges(each, next)))
  const remove = (at: number) => {
    const { drafts, draft } = store.getState()
    for (const field of Object.keys(drafts))
      if (field.startsWith(`level/${level.id}/change/`)) draft(field, null)
    set(changes.filter((_, place) => place !== at))
  }
  const add = (what: string) => {
    const started = startedChange(store.getState().plan, level, what)
    if (started) set([...changes, started])
  }
  return (
    <div className={styles.option}>
      {[...changes.entries()].map(([at, each]) => (
        <div key={`${each.what} ${at}`} className={styles.change}>
          <OptionChange
            field={`level/${level.id}/change/${at}`}
            path={`/levels/${index}/changes/${at}`}
            change={each}
            onChange={(next) => set(changes.map((other, place) => (place === at ? next : other)))}
          />
          <Button
            kind="quiet"
            size="small"
            label={`Remove this difference of ${level.label}`}
            onPress={() => remove(at)}
          >
            Remove
          </Button>
        </div>
      ))}
      <RoomFor part="changesOfLevel" count={changes.length}>
        <SelectField
          label={`What ${level.label} does differently`}
          hideLabel
          value=""
          options={addOptions}
          onValue={add}
        />
      </RoomFor>
    </div>
  )
}

const addOptions = [
  { value: '', label: changeLabel() },
  { value: 'ingredient', label: 'another ingredient or flour' },
  { value: 'hydration', label: 'its own hydration' },
  { value: 'tool', label: 'another tool' },
  { value: 'step', label: 'a step left out or done' },
  { value: 'note', label: 'something else, in words' },
]

function changeLabel(): string {
  return 'Does differently …'
}
