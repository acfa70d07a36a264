const beforeUnit = /(\d) (?=%|°|(?:kg|g|mg|mL|mm|cm|oz|lb|h|min|s|points?)\b)/g

/** Text for a place that breaks lines by itself: a number keeps its unit beside it, by a blank that does not break. */
export function boundUnits(text: string): string {
  return text.replace(beforeUnit, '$1\u00a0')
}

/** Short cells of a narrow table stay on one line; what is long may break. */
export function unbroken(text: string): string {
  return text.length > 24 ? text : text.replaceAll(' ', '\u00a0')
}
