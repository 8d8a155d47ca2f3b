/** A message of the catalogue, made ready to be filled in: numbers are written as its language has them, names likewise. */
import { IntlMessageFormat } from 'intl-messageformat'
import { unitsKept } from './kept-together.ts'
import type { NumberWriter } from './write-number.ts'
import { numberWriter } from './write-number.ts'

type Elements = ReturnType<IntlMessageFormat['getAst']>
export type MessageValues = Record<string, string | number>

export interface Message {
  fill(values: MessageValues): string
}

/** `asItIs` is for values that a message only names, {like this}: a number in full. */
const formats = { number: { asItIs: { useGrouping: false, maximumFractionDigits: 20 } } }

/** `nameOf` gives the language's word for a value that is a name, and any other text unchanged. */
export function readMessage(text: string, tag: string, nameOf: (name: string) => string): Message {
  const writers = new Map<unknown, NumberWriter>()
  const plurals = new Map<unknown, Intl.PluralRules>()
  const formatters = {
    getNumberFormat: (_: unknown, options?: Intl.NumberFormatOptions) => {
      const writer = writers.get(options) ?? numberWriter(tag, options)
      writers.set(options, writer)
      const format = (value: string | number) => (typeof value === 'string' ? nameOf(value) : writer.format(value))
      return { format } as unknown as Intl.NumberFormat
    },
    getDateTimeFormat: (_: unknown, options?: Intl.DateTimeFormatOptions) => new Intl.DateTimeFormat(tag, options),
    getPluralRules: (_: unknown, options?: Intl.PluralRulesOptions) => {
      const rules = plurals.get(options?.type) ?? new Intl.PluralRules(tag, options)
      plurals.set(options?.type, rules)
      return rules
    },
  }
  const message = new IntlMessageFormat(text, tag, formats, { formatters })
  writeValues(message.getAst())
  return { fill: (values) => unitsKept(String(message.format<string>(values))) }
}

/** Has values that are only named written by the number formatter, which a bare {name} would pass by. */
function writeValues(elements: Elements): void {
  for (const element of elements) {
    if (isNamed(element) && !asWritten.includes(element.value))
      Object.assign(element, { type: numberType, style: 'asItIs' })
    if ('options' in element) for (const { value } of Object.values(element.options)) writeValues(value)
  }
}

/** Values that are words of a link or a file, which are the same in every language. */
const asWritten = ['allowed', 'near']

/** Kinds of element in a message, as its parser counts them. */
const namedType = 1
const numberType = 2

function isNamed<Each extends { type: number }>(element: Each): element is Each & { value: string } {
  return element.type === namedType
}
