/** Turns a message of the catalogue and its values into words of the page's language. */
import { percentDecimals } from '../press/percent-decimals.ts'
import type { MessageKey } from './language.ts'
import { language, onLanguage } from './language.ts'
import type { Message, MessageValues } from './message.ts'
import { readMessage } from './message.ts'
import { readNumber } from './read-number.ts'
import type { NumberWriter } from './write-number.ts'
import { decimalSign, numberWriter } from './write-number.ts'

export type { MessageKey } from './language.ts'

const formats = new Map<string, Message>()
const numberFormats = new Map<string, NumberWriter>()
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
    format = readMessage(words[key], tag, key.startsWith(ofFiles) ? asItStands : sayName)
    formats.set(key, format)
  }
  return format.fill(values)
}

/** The checker of lessons names the words of a file, which are the same in every language. */
const ofFiles = 'checker.'

function asItStands(word: string): string {
  return word
}

/** A name that the program gave, in the page's language; one that a person gave stays as it is. */
export function sayName(name: string): string {
  const { words } = language()
  const key = `name.${name}`
  return Object.hasOwn(words, key) ? words[key as MessageKey] : name
}

/** A number with at least and at most so many decimals, as the page's language writes it. */
export function sayNumber(value: number, leastDecimals: number, mostDecimals = leastDecimals): string {
  const key = `${leastDecimals} ${mostDecimals}`
  let format = numberFormats.get(key)
  if (!format) {
    format = numberWriter(language().tag, {
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

/** Reads a number as somebody types it in the page's language; null when it is none. */
export function readTyped(typed: string): number | null {
  return readNumber(typed, decimalSign(language().tag))
}

/**
 * A share of 1 as whole percent, more exactly where it is small: "86 %", "0.04 %"; below `finest` percent only as that.
 * Shares that stand side by side and make up one whole need no more than 0.1.
 */
export function sayPercent(share: number, finest: 0.1 | 0.001 = 0.001): string {
  const percent = 100 * share
  if (percent > 0 && percent < 0.95 * finest) return say('bench.lessThan', { value: sayNumber(finest, 0, 3) })
  return say('bench.percent', { value: sayNumber(percent, percentDecimals(percent)) })
}
