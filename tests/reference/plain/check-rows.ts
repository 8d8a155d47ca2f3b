import type { Paper, Setup } from './setup.ts'

/** Papers of the model, with the numbers it starts from. */
export const papers: Record<string, Paper> = {
  coated: paper(60, 2.5, 0.8, 0.3, 0.8, 4.5),
  'light-weight coated': paper(50, 2, 1, 0.35, 0.6, 4),
  uncoated: paper(48, 1.2, 1.6, 0.4, 0.4, 3.8),
  newsprint: paper(32, 0.8, 2.5, 0.5, 0.3, 3.5),
  'weak uncoated': paper(26, 1.2, 1.6, 0.4, 0.4, 3.8),
}

function paper(
  surfaceStrength: number,
  contactRate: number,
  holdLimit: number,
  settingGain: number,
  settingTime: number,
  evenness: number,
): Paper {
  return { surfaceStrength, contactRate, holdLimit, freeSplit: 0.4, settingGain, settingTime, evenness }
}

/** The check set-up: K, C, M, Y on coated paper at 2.5 m/s and 0.45 s between units, 4 um on every form roller. */
export function checkSetup(tacks: number[], waterless = false): Setup {
  return {
    inks: tacks.map((tack, unit) => ({ name: 'KCMY'[unit], tack, film: 4 })),
    paper: papers['coated'],
    press: { speed: 2.5, interval: 0.45, temperature: 25, dampening: 1, waterless },
  }
}

export interface CheckRow {
  name: string
  tacks: number[]
  waterless: boolean
  /** trial values, percent, rounded to whole numbers */
  twoInks?: { magentaOnCyan: number; yellowOnCyan: number; yellowOnMagenta: number; contamination: number }
  fourInksSettled?: number[]
  fourInksFirstSheet?: number[]
}

/** Trial values of the model at its starting numbers, after 400 revolutions where settled; the check they give is of sense and rough size. */
export const checkRows: CheckRow[] = [
  {
    name: '16-14-12-10',
    tacks: [16, 14, 12, 10],
    waterless: false,
    twoInks: { magentaOnCyan: 85, yellowOnCyan: 88, yellowOnMagenta: 86, contamination: 2 },
    fourInksSettled: [99, 81, 80, 83],
    fourInksFirstSheet: [97, 63, 62, 68],
  },
  {
    name: '13-13-13-13',
    tacks: [13, 13, 13, 13],
    waterless: false,
    twoInks: { magentaOnCyan: 82, yellowOnCyan: 83, yellowOnMagenta: 82, contamination: 6 },
    fourInksSettled: [98, 72, 70, 74],
    fourInksFirstSheet: [94, 46, 43, 53],
  },
  {
    name: '10-12-14-16',
    tacks: [10, 12, 14, 16],
    waterless: false,
    twoInks: { magentaOnCyan: 77, yellowOnCyan: 73, yellowOnMagenta: 79, contamination: 16 },
    fourInksSettled: [95, 54, 53, 61],
    fourInksFirstSheet: [84, 17, 17, 30],
  },
  {
    name: '16-14-12-10 waterless',
    tacks: [16, 14, 12, 10],
    waterless: true,
    twoInks: { magentaOnCyan: 82, yellowOnCyan: 86, yellowOnMagenta: 82, contamination: 4 },
  },
  {
    name: '13-13-13-13 waterless',
    tacks: [13, 13, 13, 13],
    waterless: true,
    twoInks: { magentaOnCyan: 76, yellowOnCyan: 76, yellowOnMagenta: 76, contamination: 11 },
  },
  {
    name: '10-12-14-16 waterless',
    tacks: [10, 12, 14, 16],
    waterless: true,
    twoInks: { magentaOnCyan: 69, yellowOnCyan: 63, yellowOnMagenta: 71, contamination: 22 },
    fourInksSettled: [91, 39, 40, 50],
    fourInksFirstSheet: [79, 7, 8, 20],
  },
  {
    name: '14-16-12-10',
    tacks: [14, 16, 12, 10],
    waterless: false,
    fourInksSettled: [98, 74, 81, 83],
    fourInksFirstSheet: [94, 51, 64, 69],
  },
]
