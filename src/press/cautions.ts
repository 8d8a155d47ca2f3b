/** Which cautions go with a step at a real press; told before the step, the last always that this is a teaching model. */
import type { cautions } from '../words/en/cautions.ts'

export type CautionKey = keyof typeof cautions

/** Inks altered, washed out or exchanged. */
export const withSolvents: readonly CautionKey[] = ['solvents', 'guarded-nips', 'hand-cleaning', 'teaching-model']
/** Something done at the units themselves. */
export const atPress: readonly CautionKey[] = ['guarded-nips', 'teaching-model']
/** Something set at the desk, or decided there. */
export const atDesk: readonly CautionKey[] = ['teaching-model']
