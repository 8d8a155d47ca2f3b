/** What the measurements have to say, in words; lists inside it are told one after another. */
import type { Said } from '../../measure/said.ts'
import { say, sayList, sayName } from '../say.ts'

export function told({ message, values = {} }: Said): string {
  const words = Object.entries(values).map(([name, value]): [string, string | number] => [
    name,
    typeof value === 'object' ? sayList(value.map(told)) : value,
  ])
  return say(message, Object.fromEntries(words))
}

/** What a patch is called: the inks in it, first to last. */
export function patchWords(units: readonly number[], names: readonly string[]): string {
  return units.length === 0 ? say('strip.paper') : units.map((unit) => sayName(names[unit])).join(' + ')
}
