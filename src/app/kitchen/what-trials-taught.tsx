import { Section } from '@/app/kit/page/section.tsx'
import { type Asked, answerOf } from '@/app/worker/use-answer.ts'
import type { KitchenThing, Mixer } from '@/core/kitchen/kitchen-record.ts'
import type { Learned } from '@/core/learned/learned.ts'
import type { MixerWork } from '@/core/learned/learned-mixing-work.ts'
import { mixingWayTexts } from '@/core/wording/weighing/mixing-way-text.ts'
import { countText } from '@/core/wording/words/list-text.ts'
import styles from './kitchen.module.css'
import { LearnedOvenRow } from './learned-oven.tsx'
import { LearnedPanels } from './learned-panels.tsx'
import { LearnedWork } from './learned-work.tsx'

interface Props {
  kitchen: readonly KitchenThing[]
  learned: Asked<Learned>
  questions: ReadonlyMap<string, string>
}

/** What the notebook has learned of mixers, ovens and tasters from the trials that were worked. */
export function WhatTrialsTaught({ kitchen, learned: asked, questions }: Props) {
  const learned = answerOf(asked)
  if (!learned)
    return (
      <Section title="What the trials taught">
        <p className={styles.why}>Reading what the trials taught.</p>
      </Section>
    )
  const { work, panels, ovens } = learned
  const count = work.length + panels.length + ovens.length
  return (
    <Section title="What the trials taught" aside={count === 0 ? null : countText(count, 'thing')}>
      {work.map((one) => (
        <LearnedWork key={keyOf(one)} {...{ work: one, questions }} {...mixerOf(one, kitchen)} />
      ))}
      {ovens.map((one) => (
        <LearnedOvenRow key={one.ovenId} learned={one} {...{ kitchen, questions }} />
      ))}
      {panels.length > 0 ? (
        <LearnedPanels {...{ panels, kitchen, questions }} />
      ) : (
        <p className={styles.why}>
          How tasters’ scores scatter is learned from two finished trials on. None is finished yet.
        </p>
      )}
    </Section>
  )
}

const keyOf = ({ mixedBy }: MixerWork) =>
  mixedBy.by === 'mixer' ? mixedBy.mixerId : `way ${mixedBy.way}`

/** The entry a learned work belongs to, and what it is called; one of a way of mixing alone has no entry. */
function mixerOf(
  { mixedBy }: MixerWork,
  kitchen: readonly KitchenThing[],
): { mixer: Mixer | null; name: string } {
  if (mixedBy.by !== 'mixer')
    return { mixer: null, name: `Mixed ${mixingWayTexts[mixedBy.way]}, no entry named` }
  const mixer = kitchen.find((thing) => thing.id === mixedBy.mixerId)
  return mixer?.kind === 'mixer'
    ? { mixer, name: mixer.name }
    : { mixer: null, name: 'A mixer no longer kept' }
}
