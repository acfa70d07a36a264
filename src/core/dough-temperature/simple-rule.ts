/**
 * The trade's simple rule: water = n × wanted − sum of the other temperatures − friction, n being the number of
 * temperatures counting the water. All in one unit; a friction factor is a difference. It does not know the hydration.
 */
export function simpleRuleWater(
  wanted: number,
  others: readonly number[],
  friction: number,
): number {
  return (others.length + 1) * wanted - others.reduce((sum, one) => sum + one, 0) - friction
}

/** The friction factor that the rule would have needed for a measured dough: n × measured − all temperatures. */
export function frictionFromMeasured(measured: number, temperatures: readonly number[]): number {
  return temperatures.length * measured - temperatures.reduce((sum, one) => sum + one, 0)
}
