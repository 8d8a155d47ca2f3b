/**
 * What the plain reference program is given: a set-up of inks, paper and press, written as plain objects.
 * Nothing here comes from src: this program is the outside check on it.
 */

interface Ink {
  name: string
  /** tack units, at 2 m/s, 2 um and 25 degC */
  tack: number
  /** film on the form roller, um */
  film: number
  /** share of the sheet this ink covers, 0 to 1; 0.5 when left out */
  coverage?: number
  /** temperature of this unit, degC; that of the press when left out */
  temperature?: number
  /** dampening of this unit, 1 is normal; that of the press when left out */
  dampening?: number
  /** share of foreign ink in this unit's store at the start, 0 to 0.5 */
  soiled?: number
  /** everything printed so far is dried before this unit prints */
  dryBefore?: boolean
}

export interface Paper {
  /** S, tack units: scale of the paper's strength */
  surfaceStrength: number
  /** k, per um */
  contactRate: number
  /** b, um */
  holdLimit: number
  /** f on bare paper, a share */
  freeSplit: number
  /** gamma, a share */
  settingGain: number
  /** tau, s */
  settingTime: number
  /** m, the Weibull modulus of the ink planes */
  evenness: number
  /** surface strength lost per normal dampening received; none when left out */
  wetLoss?: number
}

interface Press {
  /** surface speed, m/s */
  speed: number
  /** time between two units, s */
  interval: number
  /** degC */
  temperature: number
  /** 1 is normal */
  dampening: number
  waterless: boolean
}

export interface Setup {
  inks: Ink[]
  paper: Paper
  press: Press
}

/** Exponent of speed in the pull of a film. */
export const speedExponent = 0.35
/** m/s */
export const referenceSpeed = 2
/** per degC */
export const coolingRate = 0.025
/** degC */
export const referenceTemperature = 25
/** Exponent of film thickness in the pull of a film. */
export const thinnessExponent = 0.15
/** um */
export const referenceFilm = 2
/** Share of its pull that a fresh film loses to water at normal dampening. */
const waterLoss = 0.15
/** s: how fast that loss goes once the film is on the sheet */
export const waterTime = 0.06
/** Weibull modulus of the paper's strength. */
export const paperModulus = 10
/** Share of the blanket film that wet ink takes. */
export const wetSplit = 0.5
/** um: what a unit's store holds */
export const storeVolume = 80

export const unitTemperature = (setup: Setup, unit: number) => setup.inks[unit].temperature ?? setup.press.temperature

/** Share of its pull that a fresh film of this unit loses to water. */
export const unitWater = (setup: Setup, unit: number) =>
  setup.press.waterless ? 0 : waterLoss * (setup.inks[unit].dampening ?? setup.press.dampening)
