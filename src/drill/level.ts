/** How hard a drill is. At every level one reading misleads, so that no cause is to be believed on one reading alone. */

export const levels = ['easy', 'medium', 'hard'] as const
export type Level = (typeof levels)[number]

export interface LevelRules {
  /** faults hidden */
  readonly faults: 1 | 2
  /** causes offered to choose from */
  readonly offered: number
  /** the part of a kind's sizes that is used, from this share of the way up */
  readonly sizesFrom: number
}

/** Chosen: easy faults are large and have few rivals; at the hard level two act at once. */
export const levelRules: Readonly<Record<Level, LevelRules>> = {
  easy: { faults: 1, offered: 4, sizesFrom: 0.5 },
  medium: { faults: 1, offered: 6, sizesFrom: 0 },
  hard: { faults: 2, offered: 7, sizesFrom: 0 },
}
