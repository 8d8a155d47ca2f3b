/** Cautions a lesson may carry; their words are in the catalogue. */
import { cautions } from '../words/en/cautions.ts'

export type CautionId = keyof typeof cautions
export const cautionIds = Object.keys(cautions) as CautionId[]
