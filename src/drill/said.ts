/** What a drill has to say, as messages of the catalogue with their values. */
import type { DrillKey } from '../words/en/drills.ts'
import type { Cause } from './cause.ts'
import type { Cure } from './cure.ts'
import type { Drill } from './drill.ts'
import type { Evidence, Quantity } from './evidence.ts'
import { spotsCounted } from './evidence.ts'

export interface DrillSaid {
  readonly message: DrillKey
  readonly values: Readonly<Record<string, string | number>>
}

type Job = Pick<Drill, 'ticket'>

/** The ink of a unit, and the one after it, by the order of the ticket. */
function inksAt({ ticket }: Job, unit: number | null): Record<string, string> {
  if (unit === null) return {}
  const next = ticket.inks.at(unit + 1)
  return { ink: ticket.inks[unit].name, ...(next ? { next: next.name } : {}) }
}

export function causeSaid(job: Job, { kind, unit }: Cause): DrillSaid {
  return { message: `drill.cause.${kind}`, values: inksAt(job, unit) }
}

/** Why this cause does to the sheet what it does. */
export function reasonSaid({ kind }: Cause): DrillSaid {
  return { message: `drill.why.${kind}`, values: {} }
}

export function cureSaid(job: Job, cure: Cure): DrillSaid {
  if (cure.kind === 'remedy') return { message: `remedy.${cure.remedy}`, values: inksAt(job, cure.unit) }
  return { message: `drill.putRight.${cure.cause.kind}`, values: inksAt(job, cure.cause.unit) }
}

export function evidenceSaid(job: Job, { kind, unit }: Evidence): DrillSaid {
  return { message: `drill.evidence.${kind}`, values: inksAt(job, unit) }
}

/** How it is taken. */
export function howSaid({ kind }: Evidence): DrillSaid {
  return { message: `drill.evidenceHow.${kind}`, values: { spots: spotsCounted } }
}

export function quantitySaid({ name, filter }: Quantity): DrillSaid {
  return { message: `drill.quantity.${name}`, values: filter ? { filter } : {} }
}

/** The same within a sentence, where the head of a table with its unit would be stumbled over. */
export function quantitySpoken({ name, filter }: Quantity): DrillSaid {
  return { message: `drill.spoken.${name}`, values: filter ? { filter } : {} }
}

/** What the misleading reading was, to be told once the drill is over. */
export function misledSaid({ misleading: { evidence }, ticket }: Drill): DrillSaid {
  return { message: `drill.misled.${evidence.kind}`, values: inksAt({ ticket }, evidence.unit) }
}
