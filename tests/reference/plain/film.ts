import { add, multiply, sum, zeros } from 'mathjs'

/** An amount of every ink, um each, in the order of the units: a well-mixed film, or a store. */
export type Film = number[]

export const emptyFilm = (inks: number) => zeros([inks]) as Film

/** um */
export const thickness = (film: Film): number => sum(film)

export const share = (film: Film, part: number) => multiply(film, part) as Film

export const addUp = (films: Film[], inks: number): Film =>
  films.reduce((one, other) => add(one, other), emptyFilm(inks))

/** The sum of some numbers, also of none. */
export const total = (numbers: number[]): number => sum([0, ...numbers])
