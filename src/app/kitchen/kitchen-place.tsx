import { useLiveQuery } from 'dexie-react-hooks'
import { useMemo, useState } from 'react'
import { useDraft } from '@/app/kit/field/use-draft.ts'
import { useManner } from '@/app/kit/field/use-manner.ts'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { ErrorNote } from '@/app/kit/page/error-note.tsx'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { Progress } from '@/app/kit/page/progress.tsx'
import { Toast } from '@/app/kit/page/toast.tsx'
import { useServices } from '@/app/services/services.ts'
import { teachingTrials } from '@/app/services/teaching-trials.ts'
import { useLearned } from '@/app/worker/use-learned.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { NotebookFailure } from '@/notebook/notebook-failure.ts'
import { EraseTaster } from './erase-taster.tsx'
import { formUnits, unitsOfForm } from './fields-in-units.ts'
import { FiguresSetting } from './figures-setting.tsx'
import styles from './kitchen.module.css'
import { typedFrom } from './kitchen-entry.ts'
import { type KitchenChapter, kitchenChapters, kitchenRooms } from './kitchen-fields.ts'
import { KitchenForm } from './kitchen-form.tsx'
import { KitchenRoom } from './kitchen-room.tsx'
import { thingWords } from './thing-words.ts'
import { useSetAside } from './use-set-aside.ts'
import { type CameFrom, WayBack } from './way-back.tsx'
import { WhatTrialsTaught } from './what-trials-taught.tsx'

/** What the baker has and what was learned of it: entered once, used by every trial. */
export function KitchenPlace({ from = null }: { from?: CameFrom | null }) {
  const { notebook, newId } = useServices()
  const kitchen = useLiveQuery(() => notebook.kitchen(), [notebook])
  const draft = useDraft({
    load: () => notebook.draft('kitchen'),
    save: (values) => notebook.keepDraft('kitchen', values),
    drop: () => notebook.dropDraft('kitchen'),
  })
  const units = useManner()
  const trials = useLiveQuery(() => teachingTrials(notebook), [notebook])
  const learned = useLearned(trials ?? null)
  const questions = useMemo(
    () => new Map(trials?.map((whole) => [whole.trial.id, planInForce(whole).question])),
    [trials],
  )
  const entry = useSetAside(draft, kitchen ?? [])
  const [removed, setRemoved] = useState<KitchenThing | null>(null)
  const [inUse, setInUse] = useState<KitchenThing | null>(null)
  const [erasing, setErasing] = useState<KitchenThing | null>(null)
  if (!kitchen || !draft.ready) return <Progress label="Opening the kitchen" done={null} />

  const remove = async (thing: KitchenThing) => {
    setInUse(null)
    try {
      await notebook.removeKitchenThing(thing.id)
      if (draft.values.formId === thing.id) draft.clear()
      setRemoved(thing)
    } catch (failure) {
      if (!(failure instanceof NotebookFailure) || failure.reason !== 'in-use') throw failure
      setInUse(thing)
    }
  }

  const { formKind: openedKind, formId: openedId } = draft.values
  const change = (thing: KitchenThing) => {
    if (openedId === thing.id) return entry.leave()
    const chapter = kitchenChapters.find(({ kind }) => kind === thing.kind)
    if (chapter)
      entry.open({
        ...typedFrom(chapter, thing, units),
        ...{ formKind: thing.kind, formId: thing.id, ...formUnits(units) },
      })
  }
  const form = (chapter: KitchenChapter, thing: KitchenThing | undefined, id: string) => (
    <KitchenForm
      key={id}
      chapter={chapter}
      id={id}
      draft={draft}
      others={kitchen}
      units={unitsOfForm(draft.values)}
      onKeep={async (kept) => {
        await notebook.keepKitchenThing(kept)
        draft.clear()
      }}
      onCancel={entry.leave}
      onRemove={thing && (() => remove(thing))}
      onErase={thing?.kind === 'taster' ? () => setErasing(thing) : undefined}
    />
  )
  return (
    <div>
      <WayBack from={from} />
      <PageHeading>Kitchen</PageHeading>
      <p className={styles.entered}>entered once, chosen in each plan</p>
      <div className={styles.columns}>
        <div>
          {kitchenRooms.map(({ title, kinds }) => {
            const chapters = kitchenChapters.filter(({ kind }) => kinds.includes(kind))
            const things = kinds.flatMap((kind) =>
              inOrder(kitchen.filter((one) => one.kind === kind)),
            )
            const chapter = chapters.find(({ kind }) => kind === openedKind)
            const opened = things.find(({ id }) => id === openedId)
            return (
              <ErrorBoundary key={title} what={`“${title}”`} of={kitchen}>
                <KitchenRoom
                  {...{ title, chapters, things }}
                  open={
                    chapter && openedId
                      ? { id: openedId, form: form(chapter, opened, openedId) }
                      : null
                  }
                  onAdd={({ kind }) =>
                    entry.open({ formKind: kind, formId: newId(), ...formUnits(units) })
                  }
                  onChange={(thing) => change(thing)}
                  onRemove={remove}
                  message={
                    inUse && kinds.includes(inUse.kind) ? (
                      <ErrorNote title={`${thingWords(inUse).title} stays: a trial names it.`}>
                        {inUse.kind === 'taster'
                          ? 'Erase empties the initials and keeps the scores without a name.'
                          : 'Take it out of that trial’s plan first, or change its name here.'}
                      </ErrorNote>
                    ) : null
                  }
                />
              </ErrorBoundary>
            )
          })}
        </div>
        <div>
          <ErrorBoundary what="what was learned" of={learned}>
            <WhatTrialsTaught {...{ kitchen, learned, questions }} />
          </ErrorBoundary>
          <ErrorBoundary what="how figures are written">
            <FiguresSetting />
          </ErrorBoundary>
        </div>
      </div>
      <EraseTaster taster={erasing} onClose={() => setErasing(null)} />
      {entry.aside ? (
        <Toast
          key={entry.aside.formId}
          message={`Set aside: ${entry.what}, half filled`}
          undoLabel="Have it back"
          onClose={entry.forget}
          onUndo={entry.haveBack}
        />
      ) : null}
      {removed ? (
        <Toast
          key={removed.id}
          message={`${thingWords(removed).title} removed`}
          onClose={() => setRemoved(null)}
          onUndo={async () => {
            await notebook.keepKitchenThing(removed)
            setRemoved(null)
          }}
        />
      ) : null}
    </div>
  )
}

/** By name, so that a thing stands where it stood; in the notebook they lie by their ids. */
function inOrder(things: readonly KitchenThing[]): KitchenThing[] {
  const title = (thing: KitchenThing) => thingWords(thing).title
  return things.toSorted((one, other) =>
    title(one).localeCompare(title(other), 'en', { numeric: true }),
  )
}
