/** How the page is to be for the person at it. None of it changes what the press prints. */
import type { UnitName } from './unit-names.ts'
import { unitNames } from './unit-names.ts'

/** `auto` is as the system has it. */
export const themes = ['auto', 'light', 'dark', 'high contrast'] as const
export const motions = ['auto', 'reduced', 'full'] as const

/** A field that is missing is as the page opens: as the system has it, without sound, in the set-up's own units. */
export interface Settings {
  readonly theme?: (typeof themes)[number]
  readonly measures?: readonly UnitName[]
  readonly motion?: (typeof motions)[number]
  readonly sound?: boolean
  /** a language tag, such as en or es */
  readonly language?: string
}

const languageTag = /^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$/

const isSound: { readonly [Field in keyof Settings]-?: (value: unknown) => boolean } = {
  theme: among(themes),
  motion: among(motions),
  sound: (value) => typeof value === 'boolean',
  measures: (value) => Array.isArray(value) && value.every(among(Object.values(unitNames).flat())),
  language: (value) => typeof value === 'string' && languageTag.test(value),
}

function among(names: readonly string[]): (value: unknown) => boolean {
  return (value) => typeof value === 'string' && names.includes(value)
}

/** What can be used of settings that this browser kept; the rest is as the page opens. */
export function usableSettings(kept: unknown): Settings {
  if (typeof kept !== 'object' || kept === null) return {}
  const names = Object.keys(isSound) as (keyof Settings)[]
  const fields = new Map<string, unknown>(Object.entries(kept))
  return Object.fromEntries(
    names.filter((name) => isSound[name](fields.get(name))).map((name) => [name, fields.get(name)]),
  )
}

/** What a file offers a person who has `own`: only what would change something. Units of measure come with the file's view. */
export function offeredSettings(own: Settings, theirs: Settings): Settings {
  const differs = (name: keyof typeof opening) =>
    theirs[name] !== undefined && theirs[name] !== (own[name] ?? opening[name])
  const names = Object.keys(opening) as (keyof typeof opening)[]
  return Object.fromEntries(names.filter(differs).map((name) => [name, theirs[name]]))
}

/** As the page opens for somebody who has chosen nothing; its language is then the browser's. */
const opening = { theme: 'auto', motion: 'auto', sound: false, language: '' } as const
