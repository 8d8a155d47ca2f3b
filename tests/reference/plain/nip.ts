import { cumsum, exp, max, subtract } from 'mathjs'
import { addUp, type Film, share, thickness, total } from './film.ts'
import { pickProbability } from './pick.ts'
import { blanketPull, sheetPull } from './pull.ts'
import { type Setup, wetSplit } from './setup.ts'

/** What one unit left on the sheet. Every unit adds one, an empty one where its blanket brought nothing. */
export interface Layer {
  film: Film
  /** the unit that printed it, from 0 */
  unit: number
  /** um of it that the paper holds and no later nip can split */
  held: number
  dry: boolean
}

export interface Nip {
  /** A: the share of the patch where ink closes the gap */
  contact: number
  /** Where the stack parts, as shares of the patch: [no contact, paper, layer 1 .. layer n, blanket film]; they add up to 1. */
  shares: number[]
  /** tack units: pull of [layer 1 .. layer n, blanket film] */
  pulls: number[]
  /** P(the paper breaks) where there is contact */
  pick: number
  gain: Film
  /** what each earlier layer lost to the blanket, um by ink */
  lifted: Film[]
  sheet: Layer[]
  blanket: Film
}

/** B = b (1 - e^(-x/b)): what bare paper holds at once of a blanket film x, um. */
function heldAtOnce(blanketFilm: number, holdLimit: number): number {
  return holdLimit * (1 - exp(-blanketFilm / holdLimit))
}

/** Strength of the paper's surface, tack units, once the units up to this one have wetted it. */
function wetStrength(unit: number, { inks, paper, press }: Setup): number {
  const water = inks.slice(0, unit + 1).map((ink) => (press.waterless ? 0 : (ink.dampening ?? press.dampening)))
  return paper.surfaceStrength / (1 + (paper.wetLoss ?? 0) * total(water))
}

/**
 * The blanket of a unit meets the sheet, in the mean field: every layer carries its expected thickness.
 * @param sheet the layers already printed, layer 1 touches the paper
 * @param blanket the film the blanket brings
 * @param unit from 0
 */
export function nip(sheet: Layer[], blanket: Film, unit: number, setup: Setup): Nip {
  const { paper, press } = setup
  const wetThickness = sheet.map((layer) => (layer.dry ? 0 : thickness(layer.film)))
  const wetOnSheet = total(wetThickness)
  const brought = thickness(blanket)
  const barePaper = wetOnSheet === 0

  // The pull of every ink plane, and how often each is the weakest.
  const wetUpTo = cumsum([0, ...wetThickness]) as number[]
  const pulls = sheet.map((layer, place) =>
    layer.dry
      ? Infinity
      : sheetPull(layer.film, layer.unit, (unit - layer.unit) * press.interval, wetUpTo[place], setup),
  )
  pulls.push(blanketPull(blanket, unit, setup))
  const weakness = pulls.map((pull) => pull ** -paper.evenness)
  const allWeakness = total(weakness)
  const anyInk = allWeakness > 0
  const weakest = weakness.map((plane) => (anyInk ? plane / allWeakness : 0))

  // The pull that reaches the paper is the least of them.
  const pullOnPaper = anyInk ? allWeakness ** (-1 / paper.evenness) : 0
  const strength = wetStrength(unit, setup)
  const pick = pickProbability(pullOnPaper / strength, paper.evenness)

  const contact = 1 - exp(-paper.contactRate * (brought + wetOnSheet))
  const inkBreaks = weakest.map((plane) => contact * (1 - pick) * plane)
  const paperBreaks = contact * pick
  const blanketBreaks = inkBreaks[sheet.length]

  // What the sheet gains where the blanket film breaks.
  const heldNow = barePaper ? heldAtOnce(brought, paper.holdLimit) : 0
  const gainShare = barePaper
    ? brought > 0
      ? (heldNow + paper.freeSplit * (brought - heldNow)) / brought
      : 0
    : wetSplit
  const gain = share(blanket, blanketBreaks * gainShare)

  // What each earlier layer loses: all of it where a plane below it breaks, half its free part where it breaks itself.
  // Dry ink leaves only with the torn paper it lies on.
  const lifted = sheet.map((layer, place) => {
    if (wetThickness[place] === 0) return share(layer.film, paperBreaks)
    const free = max(0, wetThickness[place] - layer.held)
    const belowBreaks = paperBreaks + total(inkBreaks.slice(0, place))
    return share(layer.film, belowBreaks + (inkBreaks[place] * free * 0.5) / wetThickness[place])
  })

  const left = sheet.map((layer, place) => ({
    ...layer,
    film: subtract(layer.film, lifted[place]),
    held: layer.held * (1 - paperBreaks),
  }))
  return {
    contact,
    shares: [1 - contact, paperBreaks, ...inkBreaks],
    pulls,
    pick,
    gain,
    lifted,
    sheet: [...left, { film: gain, unit, held: blanketBreaks * heldNow, dry: false }],
    blanket: addUp([subtract(blanket, gain), ...lifted], blanket.length),
  }
}
