/** Choosing the language of the page. */
export const language = {
  'language.choose': 'Language',
  'language.notLoaded': '{name} could not be loaded. Check the connection and choose it again.',
  'language.only': '· only in {language, select, en {English} es {Spanish} other {{language}}}',
} as const
