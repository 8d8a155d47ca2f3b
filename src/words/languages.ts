/** The languages the page is offered in, each by its tag and under its own name. */
export const languages = { en: 'English', es: 'Español' } as const

export type LanguageTag = keyof typeof languages
export const languageTags = Object.keys(languages) as LanguageTag[]
