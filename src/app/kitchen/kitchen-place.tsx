import { useLiveQuery } from 'dexie-react-hooks'
import { useMemo, useState } from 'react'
import { useTemperatureUnit } from '@/app/kit/field/temperature-unit.ts'
import { useDraft } from '@/app/kit/field/use-draft.ts'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { ErrorNote } from '@/app/kit/page/error-note.tsx'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { Progress } from '@/app/kit/page/progress.tsx'
import { Toast } from '@/app/kit/page/toast.tsx'
import { useServices } from '@/app/services/services.ts'
import { teachingTrials } from '@/app/services/teaching-trials.ts'
import { useAnswer } from '@/app/worker/use-answer.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { NotebookFailure } from '@/notebook/notebook-failure.ts'
import { EraseTaster } from './erase-taster.tsx'
import styles from './kitchen.module.css'
import { KitchenChapterList } from './kitchen-chapter.tsx'
import { typedFrom } from './kitchen-entry.ts'
import { kitchenChapters } from './kitchen-fields.ts'
import { KitchenForm } from './kitchen-form.tsx'
import { LearnedOfChapter, workOfMixer } from './learned-of-chapter.tsx'
import { LearnedWork } from './learned-work.tsx'
import { TemperatureSetting } from './temperature-setting.tsx'
import { thingWords } from './thing-words.ts'
import { useSetAside } from './use-set-aside.ts'

/** What the baker has and what was learned of it: entered once, used by every trial. */
export function KitchenPlace() {
  const { notebook, newId } = useServices()
  const kitchen = useLiveQuery(() => notebook.kitchen(), [notebook])
  const draft = useDraft({
    load: () => notebook.draft('kitchen'),
    save: (values) => notebook.keepDraft('kitchen', values),
    drop: () => notebook.dropDraft('kitchen'),
  })
  const unit = useTemperatureUnit()
  const trials = useLiveQuery(() => teachingTrials(notebook), [notebook])
  const learned = useAnswer('learning', trials ?? null, (service, read) => service.learn(read))
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
      setRemoved(thing)
    } catch (failure) {
      if (!(failure instanceof NotebookFailure) || failure.reason !== 'in-use') throw failure
      setInUse(thing)
    }
  }

  return (
    <div className={styles.kitchen}>
      <PageHeading>Kitchen</PageHeading>
      <p className={styles.why}>
        What you have, entered once. A plan names the things it uses, and a trial file carries them
        along.
      </p>
      {kitchenChapters.map((chapter) => (
        <ErrorBoundary key={chapter.kind} what={`“${chapter.title}”`} of={kitchen}>
          <KitchenChapterList
            chapter={chapter}
            things={inOrder(kitchen.filter((thing) => thing.kind === chapter.kind))}
            onAdd={() => entry.open({ formKind: chapter.kind, formId: newId(), formUnit: unit })}
            onChange={(thing) =>
              entry.open({
                ...typedFrom(chapter, thing, unit),
                ...{ formKind: thing.kind, formId: thing.id, formUnit: unit },
              })
            }
            onRemove={remove}
            onErase={setErasing}
            message={
              inUse?.kind === chapter.kind ? (
                <ErrorNote title={`${thingWords(inUse).title} stays: a trial names it.`}>
                  {inUse.kind === 'taster'
                    ? 'Erase empties the initials and keeps the scores without a name.'
                    : 'Take it out of that trial’s plan first, or change its name here.'}
                </ErrorNote>
              ) : null
            }
            learnedOf={(thing) => {
              const work = thing.kind === 'mixer' ? workOfMixer(learned, thing) : undefined
              return thing.kind === 'mixer' && work ? (
                <LearnedWork work={work} mixer={thing} name={thing.name} questions={questions} />
              ) : null
            }}
            learned={
              <ErrorBoundary what="what was learned" of={learned}>
                <LearnedOfChapter {...{ kind: chapter.kind, kitchen, learned, questions }} />
              </ErrorBoundary>
            }
            form={
              draft.values.formKind === chapter.kind && draft.values.formId ? (
                <KitchenForm
                  key={draft.values.formId}
                  chapter={chapter}
                  id={draft.values.formId}
                  draft={draft}
                  others={kitchen}
                  unit={draft.values.formUnit === 'fahrenheit' ? 'fahrenheit' : 'celsius'}
                  onKeep={async (thing) => {
                    await notebook.keepKitchenThing(thing)
                    draft.clear()
                  }}
                  onCancel={entry.leave}
                />
              ) : null
            }
          />
        </ErrorBoundary>
      ))}
      <ErrorBoundary what="the temperatures">
        <TemperatureSetting />
      </ErrorBoundary>
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
