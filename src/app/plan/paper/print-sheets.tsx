import { useState } from 'react'
import { Paper } from '@/app/kit/page/paper.tsx'
import { Section } from '@/app/kit/page/section.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useLatestSession } from '@/app/plan/page/use-letters.ts'
import panel from '@/app/plan/panels/panel.module.css'
import styles from './print-sheets.module.css'
import { PrintedShopping } from './printed-shopping.tsx'
import { PrintedWeighSheet } from './printed-weigh-sheet.tsx'
import { TubLabels } from './tub-labels.tsx'

type Sheet = 'weigh' | 'shopping' | 'labels'

/** Papers for the working day. The picked one alone goes to the printer; it is drawn first, then the print dialog opens. */
export function PrintSheets() {
  const [sheet, setSheet] = useState<Sheet | null>(null)
  const dealt = useLatestSession() !== undefined
  return (
    <Section id="plan-paper" title="On paper">
      <div className={styles.presses}>
        <Button label="Print the weigh sheet" onPress={() => setSheet('weigh')}>
          Weigh sheet
        </Button>
        <Button label="Print the shopping list" onPress={() => setSheet('shopping')}>
          Shopping list
        </Button>
        <Button label="Print tub labels" onPress={() => setSheet('labels')} disabled={!dealt}>
          Tub labels
        </Button>
      </div>
      {dealt ? null : (
        <p className={panel.soft}>
          Tub labels carry letters, which are dealt when a session begins.
        </p>
      )}
      {sheet === null ? null : (
        <Paper onDone={() => setSheet(null)}>
          {sheet === 'weigh' ? <PrintedWeighSheet /> : null}
          {sheet === 'shopping' ? <PrintedShopping /> : null}
          {sheet === 'labels' ? <TubLabels /> : null}
        </Paper>
      )}
    </Section>
  )
}
