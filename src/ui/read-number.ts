/** Reads a number as people type it: with a decimal point or a decimal comma; null when it is none. */
export function readNumber(typed: string): number | null {
  const text = typed
    .trim()
    .replace('−', '-')
    .replace(/^(-?\d*),(\d{1,2}|\d{4,})$/, '$1.$2')
    .replace(/(?<=\d),(?=\d{3}\b)/g, '')
  if (!/^-?(\d+\.?\d*|\.\d+)$/.test(text)) return null
  return Number(text)
}
