/** The controls of the bench that a lesson may show, hide or lock. */

export const controls = [
  'order',
  'tack',
  'film',
  'coverage',
  'unit temperature',
  'unit dampening',
  'inks',
  'paper',
  'surface strength',
  'absorbency',
  'kind',
  'speed',
  'interval',
  'temperature',
  'dampening',
  'waterless',
  'sheet',
  'patch',
] as const

export type Control = (typeof controls)[number]
