/** Presses and inks as supplied. Graded sets: 16, 14, 12, 10 sheet-fed and 12, 11, 10, 9 web (common practice). */
import { referenceTemperature } from '../physics/pull.ts'
import type { Ink, Press, PressKind } from './setup.ts'

/** m between units: sheet-fed chosen so that 2.5 m/s gives 0.45 s, inside the published 0.36 to 0.60 s; web 1.2 m (worked figure). */
export const unitSpacing: Record<PressKind, number> = { 'sheet-fed': 1.125, web: 1.2 }

/** m/s: about 10,000 sheets an hour; and a usual web speed (worked figure: 1.2 m at 10 m/s is 0.12 s). */
export const usualSpeed: Record<PressKind, number> = { 'sheet-fed': 2.5, web: 10 }

/** um on the form roller (nominal: gives about 4 um on the plate, 2 on the blanket and 1 on paper, handbook). */
export const usualFilm = 4

/** Chosen so that all patches take the same area. */
export const usualCoverage = 0.5

export const processNames = ['black', 'cyan', 'magenta', 'yellow'] as const
export type ProcessName = (typeof processNames)[number]

/** s between two units' nips, from their spacing and the speed (m/s). */
export function intervalAt(kind: PressKind, speed: number): number {
  return unitSpacing[kind] / speed
}

/** A press as it stands when nothing has been changed. */
export function usualPress(kind: PressKind, speed = usualSpeed[kind]): Press {
  return {
    kind,
    speed,
    interval: intervalAt(kind, speed),
    intervalPinned: false,
    temperature: referenceTemperature,
    dampening: 1,
    waterless: false,
  }
}

/** An ink with the usual film and coverage. */
export function usualInk(name: string, tack: number): Ink {
  return { name, tack, film: usualFilm, coverage: usualCoverage }
}
