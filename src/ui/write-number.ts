/**
 * Numbers as a language writes them. Where the decimal sign is a comma, thousands are parted by a narrow blank (as
 * ISO 80000-1 has it) and never by a point, so that a point that is typed can only be a decimal one.
 */
const narrowBlank = '\u202f'

export interface NumberWriter {
  format(value: number): string
}

export function numberWriter(tag: string, options: Intl.NumberFormatOptions = {}): NumberWriter {
  const format = new Intl.NumberFormat(tag, options)
  if (decimalSign(tag) === '.') return format
  return {
    format: (value) =>
      format
        .formatToParts(value)
        .map((part) => (part.type === 'group' ? narrowBlank : part.value))
        .join(''),
  }
}

export function decimalSign(tag: string): '.' | ',' {
  const parts = new Intl.NumberFormat(tag).formatToParts(1.5)
  return parts.some(({ type, value }) => type === 'decimal' && value === ',') ? ',' : '.'
}
