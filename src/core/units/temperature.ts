/** A temperature read in degrees Fahrenheit, in degrees Celsius. Exact by definition: 32 °F = 0 °C, 9 °F = 5 °C steps. */
export function celsiusFromFahrenheit(fahrenheit: number): number {
  return ((fahrenheit - 32) * 5) / 9
}

/** A temperature in degrees Celsius, in degrees Fahrenheit. */
export function fahrenheitFromCelsius(celsius: number): number {
  return (celsius * 9) / 5 + 32
}

/** A difference of temperatures (such as a friction factor) from Fahrenheit to Celsius steps: no offset of 32. */
export function celsiusDifferenceFromFahrenheit(difference: number): number {
  return (difference * 5) / 9
}

/** A difference of temperatures in Celsius steps, in Fahrenheit steps: no offset of 32. */
export function fahrenheitDifferenceFromCelsius(difference: number): number {
  return (difference * 9) / 5
}
