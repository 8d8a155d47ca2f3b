/** The units a person may choose, and what has to be assumed to turn one kind of quantity into another. */

/** The first of each is the set-up's own. */
export const unitNames = {
  speed: ['m/s', 'm/min', 'ft/min', 'sheets/h'],
  temperature: ['degC', 'degF'],
  film: ['um', 'g/m2'],
} as const

export type Quantity = keyof typeof unitNames
export type UnitName = (typeof unitNames)[Quantity][number]

/** m of printed sheet from one sheet's start to the next's: chosen so that 2.5 m/s is 10,000 sheets an hour. */
export const sheetPitch = 0.9
/** g/cm3 of wet ink: an assumption, chosen so that 1 um weighs 1 g/m2; real inks lie a little to either side. */
export const inkDensity = 1
