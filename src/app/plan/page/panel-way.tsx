import { planPanels } from './panel-names.ts'
import { usePlanPage } from './plan-page-context.ts'
import styles from './section-way.module.css'
import { showPart } from './show-part.ts'

/** The panels beside the form in one line, at the head of their column, so that none hides below its edge. */
export function PanelWay() {
  return (
    <nav className={styles.panels} aria-label="What follows from the plan">
      <PanelPresses />
    </nav>
  )
}

/** A press for each panel; the first says how much is still to mend. */
export function PanelPresses() {
  const stops = usePlanPage(
    (page) =>
      Object.keys(page.unfinished).length +
      page.troubles.filter((each) => each.severity === 'stop').length,
  )
  return planPanels.map(({ id, title }) => (
    <button key={id} type="button" className={styles.part} onClick={() => showPart(id)}>
      {id === 'plan-ready' && stops > 0 ? `${stops} to mend` : title}
    </button>
  ))
}
