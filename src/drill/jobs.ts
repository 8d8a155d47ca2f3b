/**
 * Jobs of one made-up market garden and its printers, each as its ticket says it is to run: healthy set-ups in which
 * faults are hidden. Tacks step down by 1 to 3 points, less for web presses (common practice).
 */
import type { PaperName } from '../physics/paper.ts'
import { papers } from '../physics/paper.ts'
import { usualInk, usualPress } from '../press/presets.ts'
import type { Press, SetUp } from '../press/setup.ts'

export const jobIds = [
  'harvest poster',
  'seed leaflet',
  'delivery note',
  'market news',
  'recipe cards',
  'jam label',
] as const
export type JobId = (typeof jobIds)[number]

/** The ticket of each job. All read on the first sheet, where lifting shows at its plainest. */
export const jobs: Readonly<Record<JobId, SetUp>> = {
  'harvest poster': ticket({ black: 16, cyan: 14, magenta: 12, yellow: 10 }, 'coated', usualPress('sheet-fed')),
  'seed leaflet': ticket(
    { black: 13, cyan: 13, magenta: 13, yellow: 13 },
    'light-weight coated',
    usualPress('web', 10),
  ),
  'delivery note': ticket(
    { black: 11, cyan: 10, magenta: 9, yellow: 8 },
    'weak uncoated',
    usualPress('sheet-fed', 1.6),
  ),
  'market news': ticket({ cyan: 10.5, magenta: 10, yellow: 9.5, black: 9 }, 'newsprint', usualPress('web', 5.5)),
  'recipe cards': ticket({ cyan: 16, magenta: 14, yellow: 12, black: 10 }, 'coated', usualPress('sheet-fed', 3)),
  'jam label': ticket({ cyan: 15, magenta: 13, yellow: 11 }, 'coated', {
    ...usualPress('sheet-fed', 2),
    waterless: true,
  }),
}

function ticket(tacks: Record<string, number>, paper: PaperName, press: Press): SetUp {
  const inks = Object.entries(tacks).map(([name, tack]) => usualInk(name, tack))
  return { inks, paper: papers[paper], press, reading: 'first', seed: 1 }
}
