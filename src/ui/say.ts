/** Turns a message of the catalogue and its values into words. */
import { IntlMessageFormat } from 'intl-messageformat'
import { en } from '../words/en.ts'

export type MessageKey = keyof typeof en
type MessageValues = Record<string, string | number>

const language = 'en'
const formats = new Map<string, IntlMessageFormat>()
const numberFormats = new Map<string, Intl.NumberFormat>()

export function say(key: MessageKey, values: MessageValues = {}): string {
  let format = formats.get(key)
  if (!format) {
    format = new IntlMessageFormat(en[key], language)
    formats.set(key, format)
  }
  return String(format.format<string>(values))
}

/** A number with at least and at most so many decimals, as the page's language writes it. */
export function sayNumber(value: number, leastDecimals: number, mostDecimals = leastDecimals): string {
  const key = `${leastDecimals} ${mostDecimals}`
  let format = numberFormats.get(key)
  if (!format) {
    format = new Intl.NumberFormat(language, {
      minimumFractionDigits: leastDecimals,
      maximumFractionDigits: mostDecimals,
      signDisplay: 'negative',
    })
    numberFormats.set(key, format)
  }
  return format.format(value)
}

/** A share of 1 as whole percent, more exactly where it is small: "86 %", "0.04 %". */
export function sayPercent(share: number): string {
  const percent = 100 * share
  const decimals = percent >= 9.95 || percent === 0 ? 0 : percent >= 0.095 ? 1 : 3
  if (percent > 0 && percent < 0.0005) return say('bench.lessThan', { value: sayNumber(0.001, 3) })
  return say('bench.percent', { value: sayNumber(percent, decimals) })
}
