/**
 * The rotary tackmeter: ink is spread over three rollers, and the torque that the ink's splitting asks for is read as
 * tack (ISO 12634, ASTM D4361). The pull of the film on the rollers follows the one law of pull.ts, so a reading can
 * be turned into the tack of the press model and back; each instrument has a scale of its own besides.
 */
import { filmPull } from './pull.ts'

interface Roller {
  /** mm */
  diameter: number
  width: number
}

/** What a tackmeter is set to, and how much ink it is given. */
export interface TackConditions {
  /** ml of ink metered onto the rollers */
  volume: number
  /** degC of the rollers */
  temperature: number
  /** rpm of the main roller */
  speed: number
}

export interface Tackmeter {
  id: 'laboratory' | 'workshop'
  /** the first is driven and its diameter sets the surface speed; then the spreading and the measuring roller */
  rollers: readonly [Roller, Roller, Roller]
  /** the condition at which its readings count, and the seconds after which they are taken */
  standard: TackConditions & { seconds: number }
  /** reading = offset + perPull * pull (tack units) of the film on the rollers */
  offset: number
  perPull: number
}

/** mm. Main roller: from memory, so that 1200 rpm are 4.8 m/s on its surface. */
const mainDiameter = 76.2
/** mm: chosen, with all three rollers alike, so that 1.32 ml spread to about 12 um. */
const width = 150

const alike: Roller = { diameter: mainDiameter, width }
/** 1.32 ml, 32.2 degC, 1200 rpm, read after 1 min (from memory). */
const usualStandard = { volume: 1.32, temperature: 32.2, speed: 1200, seconds: 60 }

/**
 * The instrument behind the tack numbers of the press model: its scale is chosen so that its reading at its standard
 * condition is the tack T, the pull of the same ink at 2 m/s, 2 um and 25 degC.
 */
export const laboratoryTackmeter: Tackmeter = withScale({
  id: 'laboratory',
  rollers: [alike, alike, alike],
  standard: usualStandard,
})

/**
 * Another instrument, all of it chosen: smaller rollers, another standard condition, and a scale that starts at 20 and
 * counts in other units, so that neither its readings nor their ratios compare with those of the first.
 */
export const workshopTackmeter: Tackmeter = {
  id: 'workshop',
  rollers: [
    { diameter: 60, width: 100 },
    { diameter: 50, width: 100 },
    { diameter: 50, width: 100 },
  ],
  standard: { volume: 0.4, temperature: 25, speed: 800, seconds: 60 },
  offset: 20,
  perPull: 15,
}

export const tackmeters: readonly Tackmeter[] = [laboratoryTackmeter, workshopTackmeter]

function withScale(instrument: Omit<Tackmeter, 'offset' | 'perPull'>): Tackmeter {
  const unscaled = { ...instrument, offset: 0, perPull: 1 }
  return { ...unscaled, perPull: 1 / pullPerTack(unscaled, unscaled.standard) }
}

/** cm2 of all three rollers. */
export function rollerArea({ rollers }: Tackmeter): number {
  return rollers.reduce((sum, roller) => sum + (Math.PI * roller.diameter * roller.width) / 100, 0)
}

/** um: the film that `volume` (ml) makes once spread evenly over all three rollers. */
export function filmOnRollers(instrument: Tackmeter, volume: number): number {
  return (volume / rollerArea(instrument)) * 1e4
}

/** m/s on the rollers' surface at `speed` (rpm of the main roller). */
export function surfaceSpeed({ rollers }: Tackmeter, speed: number): number {
  return (Math.PI * rollers[0].diameter * speed) / 60_000
}

/** rpm of the main roller at which its surface runs at `metresPerSecond`. */
export function speedFor({ rollers }: Tackmeter, metresPerSecond: number): number {
  return (60_000 * metresPerSecond) / (Math.PI * rollers[0].diameter)
}

/**
 * The conversion of speed, film and temperature: the pull (tack units) of a spread film of tack 1 under these
 * conditions, which is 1 at the press model's reference (2 m/s, 2 um, 25 degC). Speed above 0.
 */
export function pullPerTack(instrument: Tackmeter, { volume, temperature, speed }: TackConditions): number {
  return filmPull({
    tack: 1,
    speed: surfaceSpeed(instrument, speed),
    temperature,
    thickness: filmOnRollers(instrument, volume),
    dampening: 0,
  })
}

/** What the instrument shows, on its own scale, for a pull (tack units) of the film on its rollers. */
export function readingOfPull({ offset, perPull }: Tackmeter, pull: number): number {
  return offset + perPull * pull
}

/** What the instrument shows for an ink of this tack, spread evenly, before anything evaporates beyond the standard minute. */
export function readingOfTack(instrument: Tackmeter, tack: number, at: TackConditions = instrument.standard): number {
  return readingOfPull(instrument, tack * pullPerTack(instrument, at))
}

/** The other way round: the tack of an ink that reads `reading` on this instrument under these conditions. */
export function tackOfReading(
  instrument: Tackmeter,
  reading: number,
  at: TackConditions = instrument.standard,
): number {
  return (reading - instrument.offset) / instrument.perPull / pullPerTack(instrument, at)
}
