/** The equations of the model with the numbers of one nip put in, as TeX. */
import type { FilmAccount, NipAccount } from '../press/account.ts'
import { printsIn } from '../press/patches.ts'
import type { Readings } from '../press/readings.ts'
import type { Run } from '../press/run.ts'
import { dampeningAt, temperatureAt } from '../press/setup.ts'
import {
  referenceSpeed,
  referenceTemperature,
  referenceThickness,
  settingRise,
  settingTerm,
  speedExponent,
  temperatureRate,
  thicknessExponent,
  waterLoss,
  waterTerm,
} from '../physics/pull.ts'
import { wetSplit } from '../physics/transfer.ts'
import type { FilmPlace } from './film-name.ts'

/** A given number: as it was given, three figures at most. */
function given(value: number): string {
  return String(Number(value.toPrecision(3)))
}

/** A computed number: three figures, as a power of ten where it is very small. */
function figure(value: number): string {
  if (value === 0 || value === 1) return String(value)
  const text = value.toPrecision(3)
  if (!text.includes('e')) return text
  const [digits, power] = text.split('e')
  return String.raw`${digits} \cdot 10^{${Number(power)}}`
}

interface PullWorking {
  /** by the law, from the factors shown; tack units */
  pull: number
  tex: string
}

export const pullLaw = String.raw`F = T \left(\frac{U}{U_0}\right)^{a} e^{-c(\theta - \theta_0)} \left(\frac{h_0}{h}\right)^{\beta} s \, w`

/** The pull of one film; `wetBelow` (um) lies between it and the paper, null where it is still on the blanket. */
function pullWorking(run: Run, film: FilmAccount, unit: number, wetBelow: number | null, index: string): PullWorking {
  const { setUp, line } = run
  const { press, paper } = setUp
  const ink = setUp.inks[film.unit]
  const tack = Math.exp(film.amounts.reduce((sum, um, each) => sum + um * line.lnTack[each], 0) / film.thickness)
  const seconds = (unit - film.unit) * press.interval
  const temperature = temperatureAt(press, ink)
  const setting = wetBelow === null ? 1 : Math.exp(settingTerm(settingRise(paper, seconds), wetBelow))
  const water = Math.exp(waterTerm(waterLoss(dampeningAt(press, ink)), seconds))
  const pull =
    tack *
    (press.speed / referenceSpeed) ** speedExponent *
    Math.exp(-temperatureRate * (temperature - referenceTemperature)) *
    (referenceThickness / film.thickness) ** thicknessExponent *
    setting *
    water
  const tex = String.raw`F_{${index}} = ${figure(tack)} \left(\frac{${given(press.speed)}}{${given(referenceSpeed)}}\right)^{${given(speedExponent)}} e^{-${given(temperatureRate)}(${given(temperature)} - ${given(referenceTemperature)})} \left(\frac{${given(referenceThickness)}}{${figure(film.thickness)}}\right)^{${given(thicknessExponent)}} \cdot ${figure(setting)} \cdot ${figure(water)} = ${figure(pull)}`
  return { pull, tex }
}

/** Every film that can break, lowest first, the blanket's last. */
export function breakable({ films, blanket }: NipAccount): FilmAccount[] {
  return [...films, blanket].filter(({ pull }) => pull !== null)
}

/** What a film's letter has below it, as TeX. */
type IndexOf = (film: FilmAccount, place: FilmPlace) => string

function placeOf({ blanket }: NipAccount, film: FilmAccount): FilmPlace {
  return film === blanket ? 'blanket' : 'sheet'
}

export function pullWorkings(run: Run, account: NipAccount, indexOf: IndexOf): PullWorking[] {
  let wetBelow = 0
  return breakable(account).map((film) => {
    const place = placeOf(account, film)
    const below = place === 'blanket' ? null : wetBelow
    const working = pullWorking(run, film, account.unit, below, indexOf(film, place))
    wetBelow += film.thickness
    return working
  })
}

export const weakestLaw = String.raw`p_j = \frac{F_j^{-m}}{\sum_k F_k^{-m}}`

export function weakestWorkings(run: Run, account: NipAccount, indexOf: IndexOf): string[] {
  const m = run.setUp.paper.evenness
  const planes = breakable(account)
  const whole = 1 - account.torn
  const weight = ({ pull }: FilmAccount) => `${figure(pull ?? 0)}^{-${given(m)}}`
  const sum = planes.map(weight).join(' + ')
  return planes.map(
    (plane) =>
      String.raw`p_{${indexOf(plane, placeOf(account, plane))}} = \frac{${weight(plane)}}{${sum}} = ${figure(whole > 0 ? plane.broke / whole : 0)}`,
  )
}

export const paperLaw = String.raw`F^{*} = \Bigl(\sum_k F_k^{-m}\Bigr)^{-1/m}, \qquad P = \int_0^\infty e^{-e}\Bigl(1 - \exp\bigl(-(F^{*}/S)^{10} e^{10/m}\bigr)\Bigr)\,de`

export function paperWorking({ pullOnPaper, strength }: NipAccount): string {
  return String.raw`F^{*} = ${figure(pullOnPaper)}, \qquad \frac{F^{*}}{S} = \frac{${figure(pullOnPaper)}}{${figure(strength)}} = ${figure(pullOnPaper / strength)}`
}

export const contactLaw = String.raw`A = 1 - e^{-k (x + h)}`

export function contactWorking(run: Run, account: NipAccount): string {
  const wet = account.films.filter(({ pull }) => pull !== null).reduce((sum, { thickness }) => sum + thickness, 0)
  return String.raw`A = 1 - e^{-${given(run.setUp.paper.contactRate)} (${figure(account.blanket.thickness)} + ${figure(wet)})} = ${figure(account.contact)}`
}

export const bareLaw = String.raw`y = A (1 - P) \bigl\{ B + f (x - B) \bigr\}, \qquad B = b \bigl(1 - e^{-x/b}\bigr)`
export const wetLaw = String.raw`y = A (1 - P)\, p\, f x`

/** What the blanket's film leaves; null where it brings none. */
export function amountWorking(run: Run, account: NipAccount): { bare: boolean; tex: string } | null {
  const { blanket, contact, torn, heldAtOnce } = account
  if (!printsIn(account.patch, account.unit) || blanket.thickness === 0) return null
  const laid = account.laid.reduce((sum, um) => sum + um, 0)
  const head = String.raw`y = ${figure(contact)} \cdot ${figure(1 - torn)}`
  const x = figure(blanket.thickness)
  if (account.onBare) {
    const { freeSplit } = run.setUp.paper
    const tex = String.raw`${head} \bigl\{ ${figure(heldAtOnce)} + ${given(freeSplit)} (${x} - ${figure(heldAtOnce)}) \bigr\} = ${figure(laid)}`
    return { bare: true, tex }
  }
  const p = blanket.broke / (1 - torn)
  return {
    bare: false,
    tex: String.raw`${head} \cdot ${figure(p)} \cdot ${given(wetSplit)} \cdot ${x} = ${figure(laid)}`,
  }
}

/** Mass trap of the unit's ink on the ink before it; null at the first unit. */
export function trapWorking({ traps, onBare, films }: Readings, unit: number): string | null {
  const trap = traps.find(({ earlier, later }) => later === unit && earlier === unit - 1)
  if (!trap) return null
  const onWet = films[(1 << trap.earlier) | (1 << unit)][unit]
  return String.raw`\frac{${figure(onWet)}}{${figure(onBare[unit])}} = ${figure(trap.massTrap)}`
}
