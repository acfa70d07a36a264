import { useBench } from '@/app/bench/bench-context.ts'
import styles from '@/app/bench/entries/weigh.module.css'
import { decimalsOf, decimalText, plainNumber, withUnit } from '@/core/units/number-text.ts'
import { workedInSession } from '@/core/whole-trial/worked-in-session.ts'

/** The level of a dough as planned, as its logged weights make it, and with what was worked in by hand. */
export function LevelWorked({ batchId }: { batchId: string }) {
  const { whole, session, plan, covered } = useBench()
  if (covered) return null
  const level = workedInSession(whole, session).find((each) => each.batchId === batchId)
  if (!level || level.planned === null || level.weighed === null) return null
  const { planned, weighed, weighedUncertainty, handled, loggedLines, allLines } = level
  const decimals = decimalsOf(planned) + 1
  const inUnit = (value: number) =>
    withUnit(decimalText(value, decimals), plan.factor.unitOfMeasure)
  const twice = weighedUncertainty === null ? null : decimalText(2 * weighedUncertainty, decimals)
  const spread = twice === null || Number(twice) === 0 ? '' : ` ± ${twice}`
  const shown = [
    ['planned', withUnit(plainNumber(planned), plan.factor.unitOfMeasure)],
    [
      'as weighed',
      withUnit(`${decimalText(weighed, decimals)}${spread}`, plan.factor.unitOfMeasure),
    ],
    ['as handled', handled === null ? '' : inUnit(handled)],
  ] as const
  return (
    <dl className={styles.worked} aria-label={plan.factor.name}>
      {shown.map(([word, value]) =>
        value === '' ? null : (
          <div key={word}>
            <dt>{word}</dt>
            <dd>{value}</dd>
          </div>
        ),
      )}
      {loggedLines < allLines ? (
        <div className={styles.part}>
          <dt>logged of it</dt>
          <dd>
            {loggedLines} of {allLines} weights
          </dd>
        </div>
      ) : null}
    </dl>
  )
}
