/**
 * `?language=` before the # is for tests.
 *
 * The language a page opens in: the one this person chose before, else the one the link asks for, else the first of the
 * browser's that there is, else English. Inside another page the link goes first, since whoever made that page chose it.
 */
import { comfort } from './comfort.ts'
import { isOffered } from './language.ts'

export function wantedLanguage(): string {
  const tested = new URLSearchParams(location.search).get('language')
  const asked = new URLSearchParams(location.hash.slice(1)).get('language')
  const chosen = comfort().settings.language
  const isInside = window.parent !== window
  for (const wish of [tested, ...(isInside ? [asked, chosen] : [chosen, asked]), ...navigator.languages]) {
    const tag = [wish, wish?.split('-')[0]].find((each) => typeof each === 'string' && isOffered(each))
    if (typeof tag === 'string') return tag
  }
  return 'en'
}
