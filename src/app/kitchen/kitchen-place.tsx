import { useLiveQuery } from 'dexie-react-hooks'
import { useState } from 'react'
import { ErrorNote } from '@/app/kit/error-note.tsx'
import { PageHeading } from '@/app/kit/page-heading.tsx'
import { Progress } from '@/app/kit/progress.tsx'
import { Toast } from '@/app/kit/toast.tsx'
import { useDraft } from '@/app/kit/use-draft.ts'
import { useServices } from '@/app/services/services.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { NotebookFailure } from '@/notebook/notebook-failure.ts'
import { EraseTaster } from './erase-taster.tsx'
import styles from './kitchen.module.css'
import { KitchenChapterList } from './kitchen-chapter.tsx'
import { typedFrom } from './kitchen-entry.ts'
import { kitchenChapters } from './kitchen-fields.ts'
import { KitchenForm } from './kitchen-form.tsx'
import { thingWords } from './thing-words.ts'

/** What the baker has: entered once, used by every trial. */
export function KitchenPlace() {
  const { notebook, newId } = useServices()
  const kitchen = useLiveQuery(() => notebook.kitchen(), [notebook])
  const draft = useDraft({
    load: () => notebook.draft('kitchen'),
    save: (values) => notebook.keepDraft('kitchen', values),
    drop: () => notebook.dropDraft('kitchen'),
  })
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
        <KitchenChapterList
          key={chapter.kind}
          chapter={chapter}
          things={kitchen.filter((thing) => thing.kind === chapter.kind)}
          onAdd={() => draft.setAll({ formKind: chapter.kind, formId: newId() })}
          onChange={(thing) =>
            draft.setAll({ ...typedFrom(thing), formKind: thing.kind, formId: thing.id })
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
          form={
            draft.values.formKind === chapter.kind && draft.values.formId ? (
              <KitchenForm
                key={draft.values.formId}
                chapter={chapter}
                id={draft.values.formId}
                draft={draft}
                others={kitchen}
                onKeep={async (thing) => {
                  await notebook.keepKitchenThing(thing)
                  draft.clear()
                }}
                onCancel={() => draft.clear()}
              />
            ) : null
          }
        />
      ))}
      <EraseTaster taster={erasing} onClose={() => setErasing(null)} />
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
