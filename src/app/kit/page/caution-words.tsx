import { type Caution, cautions, cautionsDefer } from '@/core/wording/tasting/cautions.ts'

/** The cautions on some topics, a paragraph each, and whose rules come before them. */
export function CautionWords({ topics }: { topics: readonly Caution['topic'][] }) {
  return (
    <>
      {cautions
        .filter(({ topic }) => topics.includes(topic))
        .map(({ topic, title, text }) => (
          <p key={topic}>
            <b>{title}.</b> {text}
          </p>
        ))}
      <p>{cautionsDefer}</p>
    </>
  )
}
