import type { DrillEntry } from '../../src/session/drill-record.ts'

/** One entry of the record of drills, as it is kept. */
export const drillEntry: DrillEntry = {
  drill: 'easy-3',
  job: 'seed leaflet',
  kind: 'speed too high',
  first: 'found',
  tries: 2,
  taken: 4,
  cured: true,
}
