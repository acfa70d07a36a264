import { Section } from '@/app/kit/page/section.tsx'
import { useDayFound } from '@/app/plan/clock/found-day.tsx'
import { massText } from '@/core/units/mass-text.ts'
import { dayCostSentence } from '@/core/wording/plan/day-cost-sentence.ts'
import styles from './panel.module.css'

/** What one session costs: dough, tubs, oven time, hands-on hours, bites a mouth. */
export function DayCostPanel() {
  const found = useDayFound()
  const cost = found.state === 'found' ? found.cost : null
  if (!cost)
    return (
      <Section id="plan-day" title="The day">
        <p className={styles.soft}>
          {found.state === 'working'
            ? 'Dough, hours and bites are being reckoned.'
            : found.state === 'failed'
              ? 'Dough, hours and bites could not be reckoned. Load the page anew; nothing of the plan is lost.'
              : 'As soon as the batches can be made, dough, hours and bites stand here.'}
        </p>
      </Section>
    )
  const { span, rest } = dayCostSentence(cost)
  return (
    <Section id="plan-day" title="The day" aside="one session">
      <p className={styles.words}>
        <b>{span}</b>
        {rest}
        {cost.gramsPerMouth === null ? '' : ` ${massText(cost.gramsPerMouth, 0)} to eat, each.`}
      </p>
      {cost.tooManySamples ? (
        <p className={styles.warn}>
          {cost.samplesPerSitting} samples a sitting tire a palate: six are common practice. Serve
          fewer flights or take a break between them.
        </p>
      ) : null}
    </Section>
  )
}
