import { WarningMark } from '@/app/kit/look/warning-mark.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useFairness } from '@/app/plan/panels/use-fairness.ts'
import styles from './begin-foot.module.css'
import { BeginPress } from './begin-session.tsx'
import { usePlanActions, usePlanPage } from './plan-page-context.ts'

/** On a phone: what is to be mended, the way to the weigh sheet, and the press that begins, at the foot of the window. */
export function BeginFoot() {
  const stops = usePlanPage(
    (page) =>
      Object.keys(page.unfinished).length +
      page.troubles.filter((each) => each.severity === 'stop').length,
  )
  const { jumpTo } = usePlanActions()
  const toFix = useFairness()?.items.filter(({ severity }) => severity === 'fix').length ?? 0
  return (
    <div className={styles.foot} data-page-foot="">
      {stops > 0 ? (
        <button type="button" className={styles.stops} onClick={() => jumpTo('plan-ready')}>
          <WarningMark /> {stops} to mend
        </button>
      ) : toFix > 0 ? (
        <button type="button" className={styles.stops} onClick={() => jumpTo('plan-fairness')}>
          <WarningMark /> {toFix} to fix
        </button>
      ) : (
        <span />
      )}
      <Button kind="quiet" onPress={() => jumpTo('plan-sheet')}>
        Weigh sheet
      </Button>
      <BeginPress />
    </div>
  )
}
