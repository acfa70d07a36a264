import unseen from '@/app/kit/look/unseen.module.css'
import { WarningMark } from '@/app/kit/look/warning-mark.tsx'
import { PanelPresses } from './panel-way.tsx'
import { usePlanPage } from './plan-page-context.ts'
import { planSections } from './section-names.ts'
import styles from './section-way.module.css'
import { showPart } from './show-part.ts'

/**
 * The parts of the page in one line that stays in view: where something is to be mended, and a press to go there. Where
 * the page is one column, what follows from the plan stands in the same line.
 */
export function SectionWay() {
  const troubles = usePlanPage((page) => page.troubles)
  return (
    <nav className={styles.way} aria-label="Parts of the plan">
      {planSections.map(({ id, title, path }) => {
        const stops = troubles.some(
          (each) =>
            each.severity === 'stop' && (each.path === path || each.path.startsWith(`${path}/`)),
        )
        return (
          <button key={id} type="button" className={styles.part} onClick={() => showPart(id)}>
            {title}
            {stops ? (
              <>
                {' '}
                <WarningMark />
                <span className={unseen.unseen}> to mend</span>
              </>
            ) : null}
          </button>
        )
      })}
      <span className={styles.besides}>
        <PanelPresses />
      </span>
    </nav>
  )
}
