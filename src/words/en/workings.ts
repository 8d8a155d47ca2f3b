/** The panel that shows how everything is computed. */
export const workings = {} as const
