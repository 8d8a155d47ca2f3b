/** Turns a message of the catalogue and its values into words of the page's language. */
import { IntlMessageFormat } from 'intl-messageformat'
import type { MessageKey } from './language.ts'
import { language, onLanguage } from './language.ts'

export type { MessageKey } from './language.ts'
type MessageValues = Record<string, string | number>

const formats = new Map<string, IntlMessageFormat>()
const numberFormats = new Map<string, Intl.NumberFormat>()
let lists: Intl.ListFormat | undefined

onLanguage(() => {
  formats.clear()
  numberFormats.clear()
  lists = undefined
})

export function say(key: MessageKey, values: MessageValues = {}): string {
  let format = formats.get(key)
  if (!format) {
    const { tag, words } = language()
    format = new IntlMessageFormat(words[key], tag)
    formats.set(key, format)
  }
  return String(format.format<string>(values))
}

/** A number with at least and at most so many decimals, as the page's language writes it. */
export function sayNumber(value: number, leastDecimals: number, mostDecimals = leastDecimals): string {
  const key = `${leastDecimals} ${mostDecimals}`
  let format = numberFormats.get(key)
  if (!format) {
    format = new Intl.NumberFormat(language().tag, {
      minimumFractionDigits: leastDecimals,
      maximumFractionDigits: mostDecimals,
      signDisplay: 'negative',
    })
    numberFormats.set(key, format)
  }
  return format.format(value)
}

/** "a, b and c" */
export function sayList(words: readonly string[]): string {
  lists ??= new Intl.ListFormat(language().tag, { type: 'conjunction' })
  return lists.format(words)
}

/** A share of 1 as whole percent, more exactly where it is small: "86 %", "0.04 %". */
export function sayPercent(share: number): string {
  const percent = 100 * share
  const decimals = percent >= 9.95 || percent === 0 ? 0 : percent >= 0.095 ? 1 : 3
  if (percent > 0 && percent < 0.0005) return say('bench.lessThan', { value: sayNumber(0.001, 3) })
  return say('bench.percent', { value: sayNumber(percent, decimals) })
}
