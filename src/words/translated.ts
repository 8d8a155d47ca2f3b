/** The messages of an area in another language: every key of the English one, and no other. */
export type Translated<English> = Readonly<Record<keyof English, string>>
