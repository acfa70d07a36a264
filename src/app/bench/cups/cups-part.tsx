import { useState } from 'react'
import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import { Paper } from '@/app/kit/page/paper.tsx'
import { Section } from '@/app/kit/page/section.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import sheet from './cups.module.css'
import { CupsSheet } from './cups-sheet.tsx'
import { SameForAllSheet } from './same-for-all-sheet.tsx'

/** The two sheets of a baker who weighs and tastes: cups by ticket, sealed once they are filled, and the same grams for all. */
export function CupsPart() {
  const { unknown } = useBench()
  const [printing, setPrinting] = useState<'cups' | 'same' | null>(null)
  if (!unknown) return null
  return (
    <Section title="Lidded cups" aside="two sheets">
      <p>
        Fill the cups by the first sheet, best the evening before and by somebody else; fold it,
        seal it. Shuffle the cups, lay letters on, then weigh by the second sheet.
      </p>
      <div className={styles.pair}>
        <Button size="bench" onPress={() => setPrinting('cups')}>
          Print the cups
        </Button>
        <Button size="bench" onPress={() => setPrinting('same')}>
          Print the weigh sheet
        </Button>
      </div>
      {printing === null ? null : (
        <Paper onDone={() => setPrinting(null)} look={sheet.paper}>
          {printing === 'cups' ? <CupsSheet /> : <SameForAllSheet />}
        </Paper>
      )}
    </Section>
  )
}
