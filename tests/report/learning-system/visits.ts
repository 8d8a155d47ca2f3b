/** What a visit needs, for the tests: the course, a clock and a browser's storage. */
import type { Known } from '../../../src/report/learning-system/attempt.ts'
import { Visit } from '../../../src/report/learning-system/visit.ts'
import type { Parcel } from '../../../src/report/learning-system/launch.ts'
import type { LearningSystem } from '../../../src/report/learning-system/system.ts'
import type { ShelfStorage } from '../../../src/report/learning-system/shelf-storage.ts'
import type { Clock } from './clock.ts'
import { lessonNamed } from './course.ts'

export class MemoryStorage implements ShelfStorage {
  readonly entries = new Map<string, string>()
  /** whether it takes anything more */
  full = false
  get length(): number {
    return this.entries.size
  }
  key(at: number): string | null {
    return [...this.entries.keys()].at(at) ?? null
  }
  getItem(key: string): string | null {
    return this.entries.get(key) ?? null
  }
  setItem(key: string, text: string): void {
    if (this.full) throw new DOMException('The quota has been exceeded.', 'QuotaExceededError')
    this.entries.set(key, text)
  }
  removeItem(key: string): void {
    this.entries.delete(key)
  }
}

function knownOf(parcel: Parcel): Known {
  return {
    parcel,
    lesson: lessonNamed,
    titleOfDrill: (number) => `Drill ${number}`,
    asksOfDrill: 'What is wrong with this job?',
  }
}

export function visitOf(system: LearningSystem, parcel: Parcel, clock: Clock, storage: ShelfStorage | null): Visit {
  const { later, newId } = clock
  return new Visit(system, knownOf(parcel), { now: () => clock.now, later, newId, storage })
}
