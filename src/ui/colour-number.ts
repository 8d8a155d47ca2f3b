/** #rrggbb or #rgb as 0xRRGGBB. */
export function colourNumber(hex: string): number {
  const digits = hex.replace('#', '')
  const long = digits.length === 3 ? Array.from(digits, (digit) => digit + digit).join('') : digits
  return Number.parseInt(long, 16)
}
