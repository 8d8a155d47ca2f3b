/** What a line may not part: a number from its unit, a word of the glossary from the marks around it. */
const noBreak = '\u00a0'

/** Every unit that stands after a number on the page, as it is written there; "m" after "mm", as the first that fits counts. */
const units = '%|[µμ]m|mm|nm|ml|mg|ms|m/min|m/s|°C|°F|g/m²|g/cm³|ft/min|sheets/h|pliegos/h|N/m|Pa s|rpm|ΔE00|dpi|s|m|h'
const parted = new RegExp(`(?<=\\d) (?=(?:${units})(?![\\p{L}\\d/]))`, 'gu')

/** A text in which every number keeps its unit with it. */
export function unitsKept(text: string): string {
  return text.replace(parted, noBreak)
}

/**
 * What at the end of a text belongs to the word that follows: a number, whose unit it may be, a bracket, an opening
 * quotation mark.
 */
export function opening(text: string): string {
  return /(?:\d+(?:[.,]\d+)*[ \u00a0])?[(["“‘«¿¡]*$/u.exec(text)?.[0] ?? ''
}

/** What at the start of a text belongs to the word before it. */
export function closing(text: string): string {
  return /^[,.;:!?…)\]"”’»]*/u.exec(text)?.[0] ?? ''
}

/** A text between two words of the glossary, or before the first or after the last, without the marks they take. */
export function withoutMarks(text: string, isAfterWord: boolean, isBeforeWord: boolean): string {
  const from = isAfterWord ? closing(text).length : 0
  const to = isBeforeWord ? text.length - opening(text.slice(from)).length : text.length
  return text.slice(from, to)
}
