import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import { lessonCovers } from '@/core/wording/lesson/lesson-text.ts'
import styles from './frame.module.css'

/** What stands in place of Findings and Report while a lesson keeps the answer covered; the lesson can be ended there. */
export function LessonCover({ trialId, title }: { trialId: string; title: string }) {
  return (
    <div className={styles.lonePage}>
      <PageHeading>{title}</PageHeading>
      <p className={styles.lead}>{lessonCovers.title}</p>
      <p>{lessonCovers.text}</p>
      <LinkButton href={`#/trial/${trialId}/lesson`} kind="primary">
        To the lesson
      </LinkButton>
    </div>
  )
}
