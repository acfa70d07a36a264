import { WarningMark } from '@/app/kit/warning-mark.tsx'
import { usePlanPage } from './plan-page-context.ts'
import { planSections } from './section-names.ts'
import styles from './section-way.module.css'

/** The parts of the page in one line: where something is to be mended, and a press to go there. */
export function SectionWay() {
  const troubles = usePlanPage((page) => page.troubles)
  const unfinished = usePlanPage((page) => Object.keys(page.unfinished).length)
  const toMend = unfinished + troubles.filter((each) => each.severity === 'stop').length
  return (
    <nav className={styles.way} aria-label="Parts of the plan">
      {planSections.map(({ id, title, path }) => {
        const stops = troubles.some(
          (each) =>
            each.severity === 'stop' && (each.path === path || each.path.startsWith(`${path}/`)),
        )
        return (
          <button key={id} type="button" className={styles.part} onClick={() => goTo(id)}>
            {title}
            {stops ? (
              <>
                {' '}
                <WarningMark />
                <span className={styles.said}> to mend</span>
              </>
            ) : null}
          </button>
        )
      })}
      <button type="button" className={styles.part} onClick={() => goTo('plan-ready')}>
        {toMend > 0 ? `${toMend} to mend` : 'Begin'}
      </button>
    </nav>
  )
}

function goTo(id: string): void {
  document.getElementById(id)?.scrollIntoView({ block: 'start' })
}
