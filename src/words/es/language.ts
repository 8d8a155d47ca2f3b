/** Choosing the language of the page, in Spanish. */
import type { language as english } from '../en/language.ts'
import type { Translated } from '../translated.ts'

export const language: Translated<typeof english> = {
  'language.choose': 'Idioma',
  'language.notLoaded': 'No se ha podido cargar {name}. Comprueba la conexión y vuelve a elegirlo.',
  'language.only': '· solo en {language, select, en {inglés} es {español} other {{language}}}',
}
