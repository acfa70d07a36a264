import type { Chance } from '@/core/design/chance.ts'
import { type TellApartOrder, tellApartOrders } from '@/core/design/tell-apart-orders.ts'
import { samplesOf } from '@/core/trial/codes-asked.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { TellApartSet } from './session-record.ts'

/**
 * One tell-apart set for every taster, its samples under codes of their own, the orders of the test spread evenly over the
 * tasters and the sets of earlier sessions. The two levels are taken by rising value, so that of a pair the higher level is the
 * right answer.
 */
export function dealSets(
  plan: Pick<Plan, 'tellApart' | 'tasters' | 'levels'>,
  chance: Chance,
  codes: readonly string[],
  newId: () => string,
  earlier: readonly TellApartSet[] = [],
): TellApartSet[] {
  const { tellApart, tasters, levels } = plan
  if (!tellApart) return []
  const height = (id: string) => levels.find((level) => level.id === id)?.value ?? 0
  const pair = tellApart.levelIds.toSorted((one, other) => height(one) - height(other))
  const size = samplesOf[tellApart.test]
  const used = earlier.map((set) => orderOf(set, pair))
  return tellApartOrders(chance, tellApart.test, tasters.length, used).map((order, taster) => {
    const samples = order.samples.map((which, place) => ({
      code: named(codes[taster * size + place]),
      levelId: named(pair[which]),
    }))
    return {
      id: newId(),
      tasterId: named(tasters[taster]?.tasterId),
      samples,
      answerCode: named(samples[order.answer]?.code),
    }
  })
}

/** The order that a set was dealt in: by place which of the two levels (−1: neither), and the place of the right answer. */
function orderOf({ samples, answerCode }: TellApartSet, pair: readonly string[]): TellApartOrder {
  return {
    samples: samples.map(({ levelId }) => pair.indexOf(levelId)),
    answer: samples.findIndex(({ code }) => code === answerCode),
  }
}

function named(text: string | undefined): string {
  if (text === undefined)
    throw new Error('a tell-apart set wants two levels and a code for each sample')
  return text
}
