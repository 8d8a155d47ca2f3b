/** Which Firefox the main task is tried on: the one named by TACKSTAIR_FIREFOX, or the system's; one is installed if need be. */
import { installFromDebian, namedBy, placesOf, starts } from '../tools/programs.ts'

/**
 * The path of a Firefox that starts, or undefined if there is none to be had: it is a second browser, and a machine
 * without it can still run all other tests. Throws a plain sentence if the one named does not start.
 */
export function findFirefox(): string | undefined {
  const here = namedBy('TACKSTAIR_FIREFOX', 'Firefox') ?? find()
  return here ?? (installFromDebian('firefox-esr') ? find() : undefined)
}

function find(): string | undefined {
  return placesOf(['firefox-esr', 'firefox']).find(starts)
}
