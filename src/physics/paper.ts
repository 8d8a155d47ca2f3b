/** Papers: what the surface holds, how it draws ink in, how even it is and how much pull it bears. */

export type PaperName = 'coated' | 'light-weight coated' | 'uncoated' | 'weak uncoated' | 'newsprint'

export interface Paper {
  name: string
  /** the paper as supplied that it is, or was made from; its colour is known by this */
  base: PaperName
  /** tack units: scale of the Weibull distributed strength of the surface, dry */
  surfaceStrength: number
  /** 1/um: how fast contact becomes complete as more ink is brought (k of Walker and Fetsko) */
  contactRate: number
  /** um: the most a bare surface holds at once (b of Walker and Fetsko), at absorbency 1 */
  holdLimit: number
  /** share of the film not held that stays on bare paper (f of Walker and Fetsko) */
  freeSplit: number
  /** highest share by which suction raises the pull of a film on the sheet (gamma) */
  settingGain: number
  /** s: time constant of that rise (tau), at absorbency 1 */
  settingTime: number
  /** Weibull modulus m of local ink strength: higher is more even */
  evenness: number
  /** factor, 1 as supplied: multiplies what the surface holds at once and divides the setting time */
  absorbency: number
  /** surface strength lost per normal dampening received: S / (1 + wetLoss * water) */
  wetLoss: number
}

/** Weibull modulus of the paper's surface strength: chosen so that paper fails over a narrow range of pulls. */
export const paperModulus = 10

/**
 * k, b, f lie in the usual ranges for each kind of paper (from memory: defaults only, never a check); gamma, tau, m
 * and S are chosen so that the published mean of apparent trap on sheet-fed coated paper is met and each paper picks
 * where the trade sees it pick. wetLoss: direction published (water weakens the surface), number chosen.
 */
export const papers = {
  coated: paper('coated', {
    surfaceStrength: 60,
    contactRate: 2.5,
    holdLimit: 0.8,
    settingGain: 0.3,
    settingTime: 0.8,
    evenness: 4.5,
    wetLoss: 0.02,
  }),
  'light-weight coated': paper('light-weight coated', {
    surfaceStrength: 50,
    contactRate: 2,
    holdLimit: 1,
    settingGain: 0.35,
    settingTime: 0.6,
    evenness: 4,
    wetLoss: 0.03,
  }),
  uncoated: paper('uncoated', {
    surfaceStrength: 48,
    contactRate: 1.2,
    holdLimit: 1.6,
    settingGain: 0.4,
    settingTime: 0.4,
    evenness: 3.8,
    wetLoss: 0.04,
  }),
  'weak uncoated': paper('weak uncoated', {
    surfaceStrength: 26,
    contactRate: 1.2,
    holdLimit: 1.6,
    settingGain: 0.4,
    settingTime: 0.4,
    evenness: 3.8,
    wetLoss: 0.04,
  }),
  newsprint: paper('newsprint', {
    surfaceStrength: 32,
    contactRate: 0.8,
    holdLimit: 2.5,
    settingGain: 0.5,
    settingTime: 0.3,
    evenness: 3.5,
    wetLoss: 0.05,
  }),
} satisfies Record<PaperName, Paper>

export const paperNames = Object.keys(papers) as PaperName[]

function paper(base: PaperName, values: Omit<Paper, 'name' | 'base' | 'freeSplit' | 'absorbency'>): Paper {
  return { name: base, base, freeSplit: 0.4, absorbency: 1, ...values }
}

/** Surface strength (tack units) once `water` normal dampenings have been laid on the sheet. */
export function wetSurfaceStrength(paper: Paper, water: number): number {
  return paper.surfaceStrength / (1 + paper.wetLoss * water)
}
