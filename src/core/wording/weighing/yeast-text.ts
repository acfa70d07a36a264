import { yeastForms } from '@/core/formula/formula-record.ts'
import { convertYeast, type YeastForm } from '@/core/formula/yeast-conversion.ts'
import { plainNumber } from '@/core/units/number-text.ts'
import { listText } from '@/core/wording/words/list-text.ts'

const names: Readonly<Record<YeastForm, string>> = {
  instant: 'instant',
  'active-dry': 'active dry',
  fresh: 'fresh',
}

/** What the other forms of yeast would ask, in percent of flour, with the factor used and another published one. */
export function otherYeastsText(percent: number, form: YeastForm): string {
  if (!(percent > 0)) return ''
  const others = yeastForms.filter((one) => one !== form)
  const said = others.map((one) => {
    const { grams, factor, alsoPublished } = convertYeast(percent, form, one)
    const also = alsoPublished === null ? '' : `; also published: × ${figures(alsoPublished)}`
    return `${figures(grams)} % ${names[one]} (× ${figures(factor)}${also})`
  })
  return `Usual in its place: ${listText(said, 'or')}.`
}

const figures = (value: number) => plainNumber(Number(value.toPrecision(2)))
