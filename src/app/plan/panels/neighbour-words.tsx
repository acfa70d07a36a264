import type { Level } from '@/core/trial/level.ts'
import type { WeighSheet } from '@/core/weighing/weigh-sheet.ts'
import { listText } from '@/core/wording/words/list-text.ts'
import styles from './panel.module.css'

interface Props {
  sheet: WeighSheet
  levels: readonly Level[]
}

/** Whether the scales keep neighbouring levels apart, in one sentence. */
export function NeighbourWords({ sheet, levels }: Props) {
  if (sheet.scales.length === 0)
    return (
      <p className={styles.words}>
        Without a scale these are the targets, unrounded. Choose your scales under Kitchen.
      </p>
    )
  if (sheet.neighbours.length === 0) return null
  const pairs = (apart: 'not' | 'barely') =>
    sheet.neighbours
      .filter((each) => each.apart === apart)
      .map(
        (each) => `${labelOf(levels, each.lowerLevelId)} and ${labelOf(levels, each.upperLevelId)}`,
      )
  const not = pairs('not')
  const barely = pairs('barely')
  if (not.length === 0 && barely.length === 0)
    return <p className={styles.words}>The scales keep all levels apart.</p>
  return (
    <p className={styles.warn}>
      {not.length > 0 ? `The scales cannot keep ${listText(not)} apart. ` : ''}
      {barely.length > 0 ? `They barely keep ${listText(barely)} apart. ` : ''}
      Widen the gap, make larger batches, or use a finer scale.
    </p>
  )
}

const labelOf = (levels: readonly Level[], id: string) =>
  levels.find((level) => level.id === id)?.label ?? ''
