import { useLiveQuery } from 'dexie-react-hooks'
import { useState } from 'react'
import { useLocation } from 'wouter'
import { ForwardMark } from '@/app/kit/look/forward-mark.tsx'
import { Section } from '@/app/kit/page/section.tsx'
import { useOnePress } from '@/app/kit/press/use-one-press.ts'
import { LevelRail } from '@/app/kit/rail/level-rail.tsx'
import { type Sample, samples } from '@/app/services/samples.ts'
import { useServices } from '@/app/services/services.ts'
import type { Level } from '@/core/trial/level.ts'
import type { Summary } from '@/notebook/summary-record.ts'
import type { FileTrouble } from '@/trial-file/trouble.ts'
import styles from './home.module.css'
import { ImportTroubles } from './import-troubles.tsx'

interface SampleShelfProps {
  /** Trials that stand on the page already, by id: a sample whose copy is among them is not shown again. */
  shown: ReadonlySet<string>
}

/** Trials to look into before one's own; opening one copies it into the notebook, and opens that copy the next time, unless it was thrown out. */
export function SampleShelf({ shown }: SampleShelfProps) {
  const { notebook } = useServices()
  const [, go] = useLocation()
  const { run } = useOnePress()
  const [trouble, setTrouble] = useState<{ name: string; troubles: FileTrouble[] } | null>(null)
  const opened = useLiveQuery(async () => (await notebook.settings()).openedSamples, [notebook])
  const offered = samples.filter(({ name }) => !shown.has(opened?.[name] ?? ''))
  if (offered.length === 0) return null

  const openTrial = (summary: Summary | undefined, trialId: string) =>
    go(`/trial/${trialId}/${summary?.stage === 'working' ? 'bench' : 'findings'}`)

  const open = async (sample: Sample) => {
    const { openedSamples = {} } = await notebook.settings()
    const before = (await notebook.summaries({ archived: true })).find(
      ({ trialId, binned }) => trialId === openedSamples[sample.name] && !binned,
    )
    if (before) return openTrial(before, before.trialId)
    const outcome = await notebook.openSample(await sample.read())
    if (outcome.ok) {
      const { trialId } = outcome
      await notebook.keepSettings({ openedSamples: { ...openedSamples, [sample.name]: trialId } })
      openTrial(
        (await notebook.summaries()).find((each) => each.trialId === trialId),
        trialId,
      )
    } else if (outcome.reason === 'trouble')
      setTrouble({ name: sample.title, troubles: outcome.troubles })
    else throw new Error(`a sample opened as a copy met its own id: ${outcome.trialId}`)
  }

  return (
    <Section title="Sample trials" aside="an invented bake club; all data made up">
      {trouble ? <ImportTroubles fileName={trouble.name} troubles={trouble.troubles} /> : null}
      <ul className={styles.samples}>
        {offered.map((sample) => (
          <li key={sample.name} className={styles.sample}>
            <div>
              <h3 className={styles.sampleTitle}>
                <button
                  type="button"
                  className={styles.whole}
                  aria-label={`Open the sample: ${sample.title}`}
                  onClick={() => run(() => open(sample))}
                >
                  {sample.title}
                </button>
              </h3>
              <p>{sample.shows}</p>
              <p className={styles.under}>{sample.stands}</p>
            </div>
            <LevelRail
              levels={levelsOf(sample)}
              factorName={sample.factorName}
              unitOfMeasure={sample.unitOfMeasure}
              size="picture"
            />
            <ForwardMark />
          </li>
        ))}
      </ul>
    </Section>
  )
}

function levelsOf({ levels, usual }: Sample): Level[] {
  return levels.map((value) => ({
    ...{ id: String(value), value, label: String(value), control: value === usual },
  }))
}
