/**
 * Numbers as a language writes them. Where the decimal sign is a comma, thousands are parted by a narrow blank (as
 * ISO 80000-1 has it) and never by a point, so that a point that is typed can only be a decimal one. A percent sign
 * stands apart from its number in every language, as any unit does (ISO 80000-1), and on the same line.
 */
const narrowBlank = '\u202f'
const noBreak = '\u00a0'

export interface NumberWriter {
  format(value: number): string
}

export function numberWriter(tag: string, options: Intl.NumberFormatOptions = {}): NumberWriter {
  const format = new Intl.NumberFormat(tag, options)
  const hasComma = decimalSign(tag) === ','
  if (!hasComma && options.style !== 'percent') return format
  return { format: (value) => format.formatToParts(value).map(written).join('') }

  function written({ type, value }: Intl.NumberFormatPart): string {
    if (type === 'group' && hasComma) return narrowBlank
    if (type === 'percentSign') return `${noBreak}${value}`
    return type === 'literal' ? value.trim() : value
  }
}

export function decimalSign(tag: string): '.' | ',' {
  const parts = new Intl.NumberFormat(tag).formatToParts(1.5)
  return parts.some(({ type, value }) => type === 'decimal' && value === ',') ? ',' : '.'
}
