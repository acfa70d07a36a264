import { SelectField } from '@/app/kit/field/select-field.tsx'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import type { Ingredient } from '@/core/formula/formula-record.ts'
import { withFlourBag } from '@/core/plan-edits/formula/one-ingredient.ts'
import { otherYeastsText } from '@/core/wording/weighing/yeast-text.ts'
import styles from './formula-section.module.css'
import { IngredientWater } from './ingredient-water.tsx'

interface Props {
  ingredient: Ingredient
  index: number
  edit: (to: (one: Ingredient) => Ingredient) => void
}

const yeastForms = [
  { value: 'instant', label: 'instant, dry' },
  { value: 'active-dry', label: 'active dry' },
  { value: 'fresh', label: 'fresh' },
] as const

/** What only some kinds ask: the form of yeast, water in a liquid or fat, the bag of a flour, a temperature of its own. */
export function IngredientMore({ ingredient, index, edit }: Props) {
  const { kind } = ingredient
  if (kind === 'flour') return <FlourBag ingredient={ingredient} />
  if (kind === 'yeast')
    return (
      <div className={styles.more}>
        <SelectField
          label="Form"
          hint={otherYeastsText(ingredient.percent, ingredient.yeastForm ?? 'instant')}
          value={ingredient.yeastForm ?? 'instant'}
          options={yeastForms}
          onValue={(yeastForm) => edit((one) => ({ ...one, yeastForm }))}
        />
      </div>
    )
  const holdsWater = kind === 'liquid' || kind === 'fat' || kind === 'other'
  return holdsWater ? <IngredientWater ingredient={ingredient} index={index} edit={edit} /> : null
}

function FlourBag({ ingredient }: Pick<Props, 'ingredient'>) {
  const kitchen = usePlanPage((page) => page.kitchen)
  const { change } = usePlanActions()
  const bags = kitchen.filter((thing) => thing.kind === 'flour')
  if (bags.length === 0) return null
  return (
    <div className={styles.more}>
      <SelectField
        label={`Bag of ${ingredient.name}`}
        value={ingredient.flourLotId ?? ''}
        options={[
          { value: '', label: 'no bag named' },
          ...bags.map(({ id, name, lot }) => ({
            value: id,
            label: lot ? `${name}, ${lot}` : name,
          })),
        ]}
        onValue={(lotId) =>
          change((plan) => withFlourBag(plan, ingredient.id, lotId === '' ? null : lotId))
        }
      />
    </div>
  )
}
