import type { Preferment } from '@/core/formula/formula-record.ts'

const classes: readonly [string, RegExp, Preferment['kind']][] = [
  ['poolish', /poolish|pouliche/iu, 'poolish'],
  ['biga', /biga/iu, 'biga'],
  ['soaker', /tangzhong|yudane|kochst|br[üu]hst|quellst|soaker|scald/iu, 'soaker'],
  ['old', /ferment[ée]e|old dough|riporto|altteig|alter teig/iu, 'other'],
  ['sour', /levain|leaven|starter|sour|sauer|madre|anstellgut|asg|li\.?co\.?li/iu, 'starter'],
  ['sponge', /sponge|vorteig|lievitino|preferment|pre-ferment|préferment|hebel|dampfl/iu, 'sponge'],
]

/** What sort of preferment a name tells of, and its kind in a formula; a name nobody knows is a sort of its own. */
export function classOfPreferment(name: string): { sort: string; kind: Preferment['kind'] } {
  const found = classes.find(([, words]) => words.test(name))
  return found ? { sort: found[0], kind: found[2] } : { sort: name.toLowerCase(), kind: 'other' }
}

const grains: readonly [RegExp, RegExp, string][] = [
  [/rye|roggen|seigle|segale/iu, /rye|roggen|seigle|segale/iu, 'Rye flour'],
  [/spelt|dinkel|épeautre|farro/iu, /spelt|dinkel|épeautre|farro/iu, 'Spelt flour'],
  [
    /whole ?wheat|wholemeal|vollkorn|integrale|intégral/iu,
    /whole ?wheat|wholemeal|vollkorn|integrale|intégral/iu,
    'Wholemeal flour',
  ],
]

/** The flour a preferment is made of by its name: a test for one that is listed, and what to call it where none is. */
export function grainOfPreferment(name: string): { listed: RegExp; called: string } | null {
  const found = grains.find(([said]) => said.test(name))
  return found ? { listed: found[1], called: found[2] } : null
}
