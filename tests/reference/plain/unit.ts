import { add } from 'mathjs'
import { type Film, share, thickness } from './film.ts'
import { type Layer, nip, type Nip } from './nip.ts'
import type { Setup } from './setup.ts'

/** What a unit keeps in one patch from one revolution to the next. */
export interface Rollers {
  plate: Film
  blanket: Film
}

export interface UnitTurn {
  rollers: Rollers
  /** what stays on the form roller and goes back to the store; nothing where the unit does not print */
  formReturn: Film
  nip: Nip
}

/** Film R of the store's mixture. */
export function formRollerFilm(store: Film, unit: number, setup: Setup): Film {
  return share(store, setup.inks[unit].film / thickness(store))
}

/** Two films meet, mix and part in equal halves: this is one half. */
function halfOfBoth(one: Film, other: Film): Film {
  return share(add(one, other), 0.5)
}

/** One revolution of a unit in a patch where it prints: form roller with plate, plate with blanket, blanket with sheet. */
export function printingTurn(rollers: Rollers, store: Film, sheet: Layer[], unit: number, setup: Setup): UnitTurn {
  const afterForm = halfOfBoth(formRollerFilm(store, unit, setup), rollers.plate)
  const afterPlate = halfOfBoth(afterForm, rollers.blanket)
  const meeting = nip(sheet, afterPlate, unit, setup)
  return { rollers: { plate: afterPlate, blanket: meeting.blanket }, formReturn: afterForm, nip: meeting }
}

/** One revolution in a patch where the unit does not print: only its blanket meets the sheet. */
export function touchingTurn(rollers: Rollers, sheet: Layer[], unit: number, setup: Setup): UnitTurn {
  const meeting = nip(sheet, rollers.blanket, unit, setup)
  return {
    rollers: { plate: rollers.plate, blanket: meeting.blanket },
    formReturn: share(rollers.plate, 0),
    nip: meeting,
  }
}
