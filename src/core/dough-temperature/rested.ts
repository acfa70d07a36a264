/** Hours in which a covered kilogram of dough comes two thirds of its way to the room: 2.5, assumed from still air (1.5 to 4). */
const hoursOfKilogram = 2.5

/**
 * Share of the difference between dough and room that is left after a rest: exp(−t/τ), τ = 2.5 h · (kg of dough)^⅓, a covered
 * bowl at room temperature. The dough's own warming is left out.
 */
export function restShare(seconds: number, doughGrams: number): number {
  if (!(doughGrams > 0)) return 1
  return Math.exp(-seconds / 3600 / (hoursOfKilogram * Math.cbrt(doughGrams / 1000)))
}

/** Where a dough stands once it has rested: the room and what is left of the difference. °C. */
export function afterRest(celsius: number, roomCelsius: number, share: number): number {
  return roomCelsius + (celsius - roomCelsius) * share
}

/** Where a dough must begin to stand there after the rest. °C. */
export function beforeRest(celsius: number, roomCelsius: number, share: number): number {
  return roomCelsius + (celsius - roomCelsius) / share
}
