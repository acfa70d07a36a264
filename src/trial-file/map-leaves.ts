import type * as z from 'zod/mini'

type Shape = z.core.$ZodType

/** The definition of a shape as the union of all kinds there are, so that its kind tells what it is made of. */
const definitionOf = (shape: Shape) => (shape as z.core.$ZodTypes)._zod.def

/** Of the shapes a value may have, the one its telling key names. */
function shapeTold(options: readonly Shape[], discriminator: string, value: object): Shape {
  const told = Reflect.get(value, discriminator)
  const shape = options.find((option) => option._zod.propValues?.[discriminator]?.has(told))
  if (!shape) throw new Error(`no shape for ${discriminator} ${String(told)}`)
  return shape
}

/**
 * A record made anew with every value of one kind replaced: wherever the record's shape holds `leaf` itself, `change` gives
 * the new value. Everything else is carried over. The record must fit its shape; keys come out in the shape's order.
 */
export function mapLeaves(
  shape: Shape,
  leaf: Shape,
  value: unknown,
  change: (value: unknown) => unknown,
): unknown {
  if (shape === leaf) return change(value)
  const definition = definitionOf(shape)
  if (value === null) return value
  if (definition.type === 'optional' || definition.type === 'nullable')
    return mapLeaves(definition.innerType, leaf, value, change)
  if (typeof value !== 'object') return value
  switch (definition.type) {
    case 'array':
      if (!Array.isArray(value)) throw new Error('a list was expected')
      return value.map((each) => mapLeaves(definition.element, leaf, each, change))
    case 'union':
      if (!('discriminator' in definition)) throw new Error('a union must tell its members apart')
      return mapLeaves(
        shapeTold(definition.options, String(definition.discriminator), value),
        leaf,
        value,
        change,
      )
    case 'object':
      return Object.fromEntries(
        Object.entries(definition.shape)
          .filter(([key]) => Object.hasOwn(value, key))
          .map(([key, inner]) => [key, mapLeaves(inner, leaf, Reflect.get(value, key), change)]),
      )
    default:
      throw new Error(`a shape of kind ${definition.type} has no parts`)
  }
}
