import { type Asked, answerOf } from '@/app/worker/use-answer.ts'
import type { KitchenKind, KitchenThing, Mixer } from '@/core/kitchen/kitchen-record.ts'
import type { Learned } from '@/core/learned/learned.ts'
import type { MixerWork } from '@/core/learned/learned-mixing-work.ts'
import { mixingWayTexts } from '@/core/wording/weighing/mixing-way-text.ts'
import styles from './kitchen.module.css'
import { LearnedPanels } from './learned-panels.tsx'
import { LearnedWork } from './learned-work.tsx'

interface Props {
  kind: KitchenKind
  kitchen: readonly KitchenThing[]
  learned: Asked<Learned>
  questions: ReadonlyMap<string, string>
}

/** What was learned about ways of mixing that are no entry, and about the tasters together: it stands under their chapter. */
export function LearnedOfChapter({ kind, kitchen, learned: asked, questions }: Props) {
  if (kind !== 'mixer' && kind !== 'taster') return null
  const learned = answerOf(asked)
  if (!learned) return <p className={styles.why}>Reading what the trials taught.</p>
  if (kind === 'taster')
    return learned.panels.length > 0 ? (
      <LearnedPanels panels={learned.panels} kitchen={kitchen} questions={questions} />
    ) : (
      <p className={styles.why}>
        How their scores scatter is learned from two finished trials on. None is finished yet.
      </p>
    )
  const nameless = learned.work.filter(({ mixedBy }) => mixedBy.by !== 'mixer')
  return nameless.map((work) => (
    <LearnedWork
      key={work.mixedBy.way}
      work={work}
      mixer={null}
      name={`Mixed ${mixingWayTexts[work.mixedBy.way]}, no entry named`}
      questions={questions}
    />
  ))
}

/** What was learned of one mixer; undefined where no trial mixed in it. */
export function workOfMixer(learned: Asked<Learned>, mixer: Mixer): MixerWork | undefined {
  if (learned.state !== 'answered') return undefined
  return learned.answer.work.find(
    ({ mixedBy }) => mixedBy.by === 'mixer' && mixedBy.mixerId === mixer.id,
  )
}
