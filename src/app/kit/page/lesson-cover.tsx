import { EmptyState } from '@/app/kit/page/empty-state.tsx'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import { lessonCovers } from '@/core/wording/lesson/lesson-covers.ts'

/** What stands in place of an answer while a lesson keeps it covered; the lesson can be ended there. */
export function LessonCover({ trialId, title }: { trialId: string; title?: string }) {
  return (
    <>
      {title === undefined ? null : <PageHeading>{title}</PageHeading>}
      <EmptyState
        title={lessonCovers.title}
        action={
          <LinkButton href={`#/trial/${trialId}/lesson`} kind="primary">
            To the lesson
          </LinkButton>
        }
      >
        {lessonCovers.text}
      </EmptyState>
    </>
  )
}
