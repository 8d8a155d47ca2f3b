/**
 * Reads a number as people type it, null when it is none. In English a point is decimal, and a comma too where it cannot
 * part thousands. Where the language has a decimal comma, a point is decimal as well, but beside a comma it parts
 * thousands; blanks always do.
 */
export function readNumber(typed: string, decimal: '.' | ',' = '.'): number | null {
  const line = typed.trim().replace('−', '-')
  const text =
    decimal === ','
      ? pointed(line)
      : line.replace(/^(-?\d*),(\d{1,2}|\d{4,})$/, '$1.$2').replace(/(?<=\d),(?=\d{3}\b)/g, '')
  if (!/^-?(\d+\.?\d*|\.\d+)$/.test(text)) return null
  return Number(text)
}

/** What is written with a decimal comma, written with a point. */
function pointed(text: string): string {
  const together = text.replace(/(?<=\d)\s(?=\d{3}(\D|$))/g, '')
  if (!together.includes(',')) return together
  return together.replace(/(?<=\d)\.(?=\d{3}(\D|$))/g, '').replace(',', '.')
}
