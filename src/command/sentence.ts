/** A message of the measurements as one plain sentence for the command line: no links, no mark-up. */
import { IntlMessageFormat } from 'intl-messageformat'
import type { Said } from '../measure/said.ts'
import { measure } from '../words/en/measure.ts'

export function sentence({ message, values = {} }: Said): string {
  const filled = Object.fromEntries(
    Object.entries(values).map(([name, value]) => [
      name,
      typeof value === 'object' ? value.map(sentence).join(', ') : value,
    ]),
  )
  return String(new IntlMessageFormat(measure[message], 'en').format<string>(filled)).replaceAll(
    /\[\[(?:[^\]|]*\|)?([^\]|]*)\]\]/g,
    '$1',
  )
}
