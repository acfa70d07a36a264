import type { MassUnit } from './mass.ts'

const spellings: Readonly<Record<MassUnit, string>> = {
  g: 'g gr gr. gm gms gram grams gramm gramme grammes grammo grammi',
  hg: 'hg etto etti ettogrammo ettogrammi',
  kg: 'kg kg. kgs kilo kilos kilogram kilograms kilogramm kilogramme kilogrammes chilo chili chilogrammo chilogrammi',
  oz: 'oz oz. ounce ounces',
  lb: 'lb lb. lbs lbs. pound pounds',
  ml: 'ml milliliter millilitre milliliters millilitres millilitri millilitro',
  cl: 'cl centiliter centilitre centiliters centilitres centilitri zentiliter',
  dl: 'dl deciliter decilitre deciliters decilitres decilitri decilitro deziliter',
  l: 'l l. lt lt. liter litre liters litres litro litri',
}

/** Spellings of each unit that a person may put behind an amount, in lower case: English, German, French and Italian. */
export const massSpellings: Readonly<Record<string, MassUnit>> = Object.fromEntries(
  Object.entries(spellings).flatMap(([unit, words]) =>
    words.split(' ').map((word) => [word, unit as MassUnit]),
  ),
)
