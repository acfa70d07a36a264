import { useState } from 'react'
import { useLocation } from 'wouter'
import { Section } from '@/app/kit/page/section.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { type Sample, samples } from '@/app/services/samples.ts'
import { useServices } from '@/app/services/services.ts'
import type { FileTrouble } from '@/trial-file/trouble.ts'
import styles from './home.module.css'
import { ImportTroubles } from './import-troubles.tsx'

/** Trials to look into before one's own; opening one copies it into the notebook. */
export function SampleShelf() {
  const { notebook } = useServices()
  const [, go] = useLocation()
  const [trouble, setTrouble] = useState<{ name: string; troubles: FileTrouble[] } | null>(null)
  if (samples.length === 0) return null

  const open = async (sample: Sample) => {
    const outcome = await notebook.openSample(await sample.read())
    if (outcome.ok) {
      const summary = (await notebook.summaries()).find((each) => each.trialId === outcome.trialId)
      const place = summary?.stage === 'working' ? 'bench' : 'findings'
      go(`/trial/${outcome.trialId}/${place}`)
    } else if (outcome.reason === 'trouble')
      setTrouble({ name: sample.title, troubles: outcome.troubles })
    else throw new Error(`a sample opened as a copy met its own id: ${outcome.trialId}`)
  }

  return (
    <Section title="Sample trials" aside="of an invented bake club; all their data are made up">
      {trouble ? <ImportTroubles fileName={trouble.name} troubles={trouble.troubles} /> : null}
      <ul className={styles.samples}>
        {samples.map((sample) => (
          <li key={sample.name}>
            <div>
              <p className={styles.sampleTitle}>{sample.title}</p>
              <p className={styles.soft}>{sample.shows}</p>
            </div>
            <Button label={`Open the sample: ${sample.title}`} onPress={() => open(sample)}>
              Open
            </Button>
          </li>
        ))}
      </ul>
    </Section>
  )
}
