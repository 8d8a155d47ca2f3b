/**
 * The one store: the set-up with its history, which part of the result is looked at, and who wants to know. Results are
 * worked out from it; nothing else keeps a copy of the set-up.
 */
import { checkSetUp } from '../press/check-setup.ts'
import type { Problem } from '../press/problem.ts'
import { problem } from '../press/problem.ts'
import type { SetUp } from '../press/setup.ts'
import { apply } from './apply.ts'
import type { Change } from './change.ts'
import { controlOf } from './closed.ts'
import { Colours, sameColours } from './colours.ts'
import type { History } from './history.ts'
import { advance, amend, redo, startHistory, undo } from './history.ts'
import type { Look } from './look.ts'
import { openingLook } from './look.ts'
import type { Playback, PlaybackEvent } from './playback.ts'
import { openingPhase, play } from './playback.ts'
import type { Later, Printing } from './printing.ts'
import { startPrinting, takesLong } from './printing.ts'
import { Results } from './results.ts'
import type { ScenarioName } from './scenarios.ts'
import { scenarios } from './scenarios.ts'

/** One step of the history. */
interface Step {
  setUp: SetUp
  /** the scenario it started from, and whether anything has been changed since */
  scenario: ScenarioName | null
  changed: boolean
  /** what was done to get here */
  by: Change['kind'] | null
}

/** What stood on the bench before a lesson took it. */
interface Aside {
  history: History<Step>
  playback: Playback
  leftOut: Look['leftOut']
}

type Listener = () => void

const fieldsBesidesPhase = ['unit', 'playing', 'slow', 'stopsAfter'] as const

const firstScenario: ScenarioName = 'descending'

export class Session {
  #history: History<Step>
  #playback: Playback
  #look: Look = openingLook
  #aside: Aside | null = null
  #results: Results | undefined
  /** results that took long, for as long as their set-up is in the history */
  readonly #longResults = new WeakMap<SetUp, Results>()
  #printing: Printing | null = null
  readonly #later: Later
  #colours: Colours | undefined
  readonly #listeners = new Set<Listener>()
  readonly #frameListeners = new Set<Listener>()

  /** `later` calls the next step of long work once the page has had its turn. */
  constructor(later: Later = (step) => setTimeout(step)) {
    this.#later = later
    const checked = checkSetUp(scenarios[firstScenario])
    if ('problems' in checked) throw new Error(checked.problems.map(({ message }) => message).join('; '))
    const { setUp } = checked
    this.#history = startHistory({ setUp, scenario: firstScenario, changed: false, by: null })
    this.#playback = { unit: setUp.inks.length - 1, phase: openingPhase, playing: false, slow: true, stopsAfter: null }
  }

  get setUp(): SetUp {
    return this.#history.present.setUp
  }

  get scenario(): { name: ScenarioName | null; changed: boolean } {
    const { scenario: name, changed } = this.#history.present
    return { name, changed }
  }

  get playback(): Playback {
    return this.#playback
  }

  get look(): Look {
    return this.#look
  }

  get canUndo(): boolean {
    return this.#history.past.length > 0
  }

  get canRedo(): boolean {
    return this.#history.future.length > 0
  }

  get results(): Results {
    return (this.#results ??= Results.of(this.setUp))
  }

  get colours(): Colours {
    return (this.#colours ??= new Colours(this.setUp))
  }

  /** The sheet being printed for a set-up that is not in force yet. */
  get printing(): Printing | null {
    return this.#printing
  }

  /** The patch looked at: those inks print in it that have not been left out. */
  get patch(): number {
    const { leftOut } = this.#look
    return this.setUp.inks.reduce((patch, ink, unit) => (leftOut.includes(ink.name) ? patch : patch | (1 << unit)), 0)
  }

  /** Makes a change; returns every problem in words, and then nothing has changed. */
  change(change: Change): Problem[] {
    const control = controlOf(change)
    if (control && this.#look.closed.includes(control)) return [problem('', 'problem.kept')]
    const checked = apply(this.setUp, change)
    if ('problems' in checked) return checked.problems
    const { present } = this.#history
    const taken = change.kind === 'take scenario' ? change.scenario : null
    const next: Step = {
      setUp: checked.setUp,
      scenario: taken ?? (change.kind === 'load' ? null : present.scenario),
      changed: taken === null && change.kind !== 'load',
      by: change.kind,
    }
    const grownOn = change.kind === 'run on' && present.by === 'run on'
    const history = grownOn ? amend(this.#history, next) : advance(this.#history, next)
    const { setUp } = next
    if (taken !== null) this.#lookAfresh(setUp.inks.length)
    if (change.kind === 'run on') this.#move(history, this.results.nextSheet(setUp))
    else if (takesLong(setUp)) this.#print(history)
    else this.#move(history)
    return []
  }

  /** A scenario is looked at where all inks lie on one another, at the last unit, with the filaments stretched. */
  #lookAfresh(units: number): void {
    this.#look = { ...this.#look, leftOut: [] }
    this.#playback = { ...this.#playback, unit: units - 1, phase: openingPhase, playing: false, stopsAfter: null }
  }

  /**
   * From here on the bench is a lesson's: undo ends where it stands now, and what stood there before is kept for
   * `giveBack`. Called again, it only moves the end of undo.
   */
  lend(): void {
    this.#aside ??= { history: this.#history, playback: this.#playback, leftOut: this.#look.leftOut }
    this.#history = startHistory(this.#history.present)
    this.#tell(this.#listeners)
  }

  /** What is the person's own of the bench: as it stands, or as it stood before it was lent. */
  get own(): Pick<Session, 'setUp' | 'look' | 'playback'> {
    if (!this.#aside) return this
    const { history, playback, leftOut } = this.#aside
    return { setUp: history.present.setUp, playback, look: { ...this.#look, leftOut } }
  }

  get isLent(): boolean {
    return this.#aside !== null
  }

  /** The bench as it was before it was lent, with all that could be undone there. */
  giveBack(): void {
    const aside = this.#aside
    if (!aside) return
    this.#aside = null
    this.#look = { ...this.#look, leftOut: aside.leftOut, closed: [], known: null }
    this.#move(aside.history)
    this.#playback = { ...aside.playback, playing: false }
    this.#tell(this.#listeners)
  }

  undo(): void {
    this.#move(undo(this.#history))
  }

  redo(): void {
    this.#move(redo(this.#history))
  }

  /** Looks at the result in another way. */
  lookWith(part: Partial<Look>): void {
    this.#look = { ...this.#look, ...part }
    this.#tell(this.#listeners)
  }

  /** Moves the clock; frame listeners alone hear of it where nothing but the phase has moved. */
  play(event: PlaybackEvent): void {
    const before = this.#playback
    const { playback, sheets } = play(before, event, this.setUp.inks.length)
    this.#playback = playback
    for (let sheet = 0; sheet < sheets && this.setUp.reading !== 'settled'; sheet++) this.change({ kind: 'run on' })
    const same = fieldsBesidesPhase.every((field) => before[field] === playback[field])
    this.#tell(same ? this.#frameListeners : this.#listeners)
  }

  /** Calls `listener` after every change but a moving phase; returns what ends that. */
  subscribe(listener: Listener): () => void {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  /** Calls `listener` whenever the phase has moved and nothing else. */
  subscribeToFrames(listener: Listener): () => void {
    this.#frameListeners.add(listener)
    return () => this.#frameListeners.delete(listener)
  }

  /** A sheet far into the run: the set-up changes when it is printed, or not at all if that is called off. */
  #print(history: History<Step>): void {
    const { setUp } = history.present
    if (typeof setUp.reading === 'string') return
    this.#printing?.cancel()
    this.#printing = startPrinting(setUp, setUp.reading.sheet, this.#later, {
      step: () => this.#tell(this.#listeners),
      done: (run) => this.#move(history, new Results(run)),
    })
    this.#tell(this.#listeners)
  }

  /** Calls off the sheet being printed; everything stays as it was before. */
  cancelPrinting(): void {
    this.#printing?.cancel()
    this.#printing = null
    this.#tell(this.#listeners)
  }

  #move(history: History<Step>, results?: Results): void {
    if (history === this.#history) return
    this.#printing?.cancel()
    this.#printing = null
    const { setUp } = history.present
    if (setUp !== this.setUp) {
      if (!sameColours(setUp, this.setUp)) this.#colours = undefined
      this.#results = results ?? this.#longResults.get(setUp)
      if (results && takesLong(setUp)) this.#longResults.set(setUp, results)
    }
    this.#history = history
    const units = this.setUp.inks.length
    this.#playback = { ...this.#playback, unit: Math.min(this.#playback.unit, units - 1) }
    this.#tell(this.#listeners)
  }

  #tell(listeners: ReadonlySet<Listener>): void {
    for (const listener of listeners) listener()
  }
}
