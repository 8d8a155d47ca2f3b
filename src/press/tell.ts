/** What one nip did, in the fewest statements that are true: which message, with which numbers. The words are elsewhere. */
import type { FilmAccount, NipAccount } from './account.ts'
import { mainInkOf } from './account.ts'
import { printsIn } from './patches.ts'

/** "86 of 100 spots"; small shares are counted among more. */
export interface Spots {
  count: number
  of: number
}

type InkName = string

/** The statements that can be made of a nip, with the values their words need; films in um. */
export type Told =
  | { message: 'nip.nothing'; values: { unit: number } }
  | { message: 'nip.idle'; values: { unit: number; lifted: number; laid: number } }
  | { message: 'nip.bare'; values: { ink: InkName; brought: number; held: number; laid: number } }
  | { message: 'nip.dry'; values: { ink: InkName; brought: number; laid: number } }
  | { message: 'nip.took'; values: Spots & { ink: InkName; below: InkName } }
  | { message: 'nip.failed'; values: Spots & { ink: InkName } }
  | { message: 'nip.lifted'; values: Spots & { ink: InkName; weakest: InkName; weakestCount: number } }
  | { message: 'nip.lifted-one'; values: Spots & { ink: InkName; weakest: InkName } }
  | { message: 'nip.torn'; values: Spots }
  | { message: 'nip.open'; values: Spots }

/** Shares smaller than this are left unsaid. */
const worthTelling = 0.0005

/** Tells a nip; `names` are the inks' names by unit. */
export function tellNip(account: NipAccount, names: readonly string[]): Told[] {
  const { unit, films, blanket, contact } = account
  const ink = names[unit]
  const wet = films.filter((film) => film.pull !== null)
  if (wet.length === 0 && blanket.thickness === 0) return [{ message: 'nip.nothing', values: { unit: unit + 1 } }]
  const told: Told[] = []
  if (!printsIn(account.patch, unit)) {
    told.push({ message: 'nip.idle', values: { unit: unit + 1, lifted: sum(account.lifted), laid: sum(account.laid) } })
  } else if (account.onBare) {
    const { thickness: brought } = blanket
    const laid = sum(account.laid)
    const onDry = films.some((film) => film.thickness > 0)
    if (onDry) told.push({ message: 'nip.dry', values: { ink, brought, laid } })
    else told.push({ message: 'nip.bare', values: { ink, brought, held: account.heldAtOnce, laid } })
  } else {
    told.push(...tellWet(account, names, wet))
  }
  if (contact * account.torn >= worthTelling) told.push({ message: 'nip.torn', values: spots(contact * account.torn) })
  if (printsIn(account.patch, unit) && 1 - contact >= 0.01)
    told.push({ message: 'nip.open', values: spots(1 - contact) })
  return told
}

/** A printing film on wet films: where it split itself, and where one below did. */
function tellWet(account: NipAccount, names: readonly string[], wet: readonly FilmAccount[]): Told[] {
  const { unit, blanket, contact } = account
  const ink = names[unit]
  const split = contact * blanket.broke
  const lifted = contact * sum(wet.map((film) => film.broke))
  const told: Told[] =
    split >= 0.5
      ? [{ message: 'nip.took', values: { ...spots(split), ink, below: names[mainInkOf(wet[wet.length - 1])] } }]
      : [{ message: 'nip.failed', values: { ...spots(split), ink } }]
  if (lifted >= worthTelling) {
    const inks = wet.map(mainInkOf)
    const broke = names.map((_, each) => sum(wet.filter((_film, at) => inks[at] === each).map((film) => film.broke)))
    const most = Math.max(...broke)
    const weakest = names[broke.indexOf(most)]
    const counted = spots(lifted)
    const weakestCount = Math.round(contact * most * counted.of)
    if (new Set(inks).size === 1) told.push({ message: 'nip.lifted-one', values: { ...counted, ink, weakest } })
    else told.push({ message: 'nip.lifted', values: { ...counted, ink, weakest, weakestCount } })
  }
  return told
}

/** Counts a share among 100 spots, or among 1,000 or 10,000 where it is too small for that. */
export function spots(share: number): Spots {
  const of = share >= 0.01 || share === 0 ? 100 : share >= 0.001 ? 1000 : 10_000
  return { count: Math.round(share * of), of }
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0)
}
