/** What the elements of the trials table share: the trials of the session, and what is read off each. */
import type { Results } from '../../session/results.ts'
import type { Trial } from '../../session/saved.ts'
import type { Trials } from '../../session/trials.ts'
import { trialsOf } from '../../session/trials.ts'
import { say, sayName } from '../say.ts'
import { SessionElement } from '../session-element.ts'

/** What is read off a trial, shares of 1. */
export const trialReadings = ['leastTrap', 'lifted', 'torn', 'contamination'] as const
export type TrialReading = (typeof trialReadings)[number]

export abstract class TrialsElement extends SessionElement {
  #unsubscribe: (() => void) | undefined

  override connectedCallback(): void {
    super.connectedCallback()
    this.#unsubscribe = this.trials.subscribe(() => this.requestUpdate())
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#unsubscribe?.()
  }

  protected get trials(): Trials {
    return trialsOf(this.session)
  }
}

/** The pair of units whose mass trap is least, and the worst of everything else. */
export function readTrial({ readings, run }: Results): Record<TrialReading, number> & { pair: [number, number] } {
  const worst = readings.traps.reduce((least, trap) => (trap.massTrap < least.massTrap ? trap : least))
  return {
    leastTrap: worst.massTrap,
    pair: [worst.earlier, worst.later],
    lifted: Math.max(0, ...readings.lifted.flat()),
    torn: readings.worstTorn,
    contamination: Math.max(...run.trains.map(({ store }, unit) => 1 - store[unit])),
  }
}

export function orderOf({ setUp }: Pick<Trial, 'setUp'>): string {
  return setUp.inks.map(({ name }) => sayName(name)).join(', ')
}

export function sheetOf({ setUp: { reading } }: Pick<Trial, 'setUp'>): string {
  return typeof reading === 'object'
    ? say('trials.sheet.number', { sheet: reading.sheet })
    : say(`trials.sheet.${reading}`)
}
