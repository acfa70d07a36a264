import { useContext, useMemo } from 'react'
import { useDraft } from '@/app/kit/field/use-draft.ts'
import { LessonsContext } from '@/app/kit/page/lessons-context.ts'
import { draftsOf } from '@/app/services/drafts-of.ts'
import { useServices } from '@/app/services/services.ts'
import {
  coveredBy,
  type LessonPart,
  lessonParts,
  lessonPlates,
  openParts,
} from '@/core/lesson/lesson.ts'
import { saidOfDraft } from '@/core/lesson/said-of-draft.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

/** One lesson on this device: what the learner said, what is open, and how it moves on. What is said survives a reload. */
export function useLesson(trialId: string, plan: Plan) {
  const { notebook, newSeed } = useServices()
  const lessons = useContext(LessonsContext)
  const draft = useDraft(draftsOf(notebook, `lesson/${trialId}`, 'the lesson'))
  const { values } = draft
  const begun = values.seed !== undefined
  const seed = Number(values.seed ?? 0)
  const plates = useMemo(() => lessonPlates(plan, seed), [plan, seed])
  const said = saidOfDraft(
    values,
    plan.levels.map(({ id }) => id),
  )
  const open = openParts(said, plates)
  const kept = lessonParts.find((part) => part === values.part) ?? 'question'
  const part: LessonPart = open.includes(kept) ? kept : (open.at(-1) ?? 'question')
  const others = lessons.filter((id) => id !== trialId)
  return {
    ready: draft.ready,
    begun,
    plates,
    said,
    open,
    part,
    covered: coveredBy(said, plates),
    why: values.why ?? '',
    say: draft.set,
    /** Covers the answer, deals the plates and opens the first part. */
    begin: async () => {
      await notebook.keepSettings({ lessons: [...others, trialId] })
      draft.setAll({ seed: String(newSeed()), part: 'question' })
    },
    goTo: async (next: LessonPart) => {
      if (next === 'answer' && lessons.includes(trialId))
        await notebook.keepSettings({ lessons: others })
      draft.set('part', next)
    },
    /** Uncovers the answer and forgets what was said. */
    end: async () => {
      draft.clear()
      await notebook.keepSettings({ lessons: others })
    },
  }
}

export type Lesson = ReturnType<typeof useLesson>
