/**
 * Every sentence on the page, in Spanish. An area that has no file here yet stands in English; one that has must hold
 * every key of the English one, or nothing compiles.
 */
import { en } from './en.ts'
import { language } from './es/language.ts'
import { page } from './es/page.ts'
import type { Translated } from './translated.ts'

export const es: Translated<typeof en> = {
  ...en,
  ...language,
  ...page,
}
