import type { FindingsDocument } from '@/core/findings/findings-document.ts'
import type { RestsOn } from '@/core/house/house-record.ts'
import type { Level } from '@/core/trial/level.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

/**
 * The level to keep as a house formula and why: the one the conclusion adopts, else the baker's usual since nothing was
 * settled. `picked` is the baker's own choice, and says so unless it is one of these. Null where there is neither.
 */
export function levelToAdopt(
  plan: Plan,
  findings: FindingsDocument | null,
  picked: Level | null = null,
): { level: Level; because: RestsOn['because'] } | null {
  const ending = findings?.responses[0]?.conclusion.ending
  const ended =
    ending?.kind === 'adopt' ? plan.levels.find(({ id }) => id === ending.level) : undefined
  const usual = plan.levels.find((level) => level.control)
  const level = picked ?? ended ?? usual
  if (!level) return null
  if (level.id === ended?.id) return { level, because: 'easiest' }
  return { level, because: !ended && level.id === usual?.id ? 'usual' : 'picked' }
}
