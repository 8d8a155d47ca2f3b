/** The lecture of a session: its scenes in their order. Whatever is done to the list can be taken back. Plain data. */
import type { History } from './history.ts'
import { advance, amend, redo, startHistory, undo } from './history.ts'
import { moved } from './order.ts'
import type { Scene } from './scene.ts'
import { mostScenes } from './scene.ts'
import type { Session } from './session.ts'

interface Step {
  readonly scenes: readonly Scene[]
  /** the field that was typed in and its place, so that a sentence is taken back as a whole */
  readonly typed: string | null
}

export class Lecture {
  #history: History<Step> = startHistory<Step>({ scenes: [], typed: null })
  readonly #listeners = new Set<() => void>()
  /** place of the scene being worked on: it is still that one after a look at the bench */
  chosen = 0

  get scenes(): readonly Scene[] {
    return this.#history.present.scenes
  }

  get canUndo(): boolean {
    return this.#history.past.length > 0
  }

  get canRedo(): boolean {
    return this.#history.future.length > 0
  }

  /** Takes over a whole list, such as a file's or the ready example; the one before can be had back. */
  take(scenes: readonly Scene[]): void {
    this.#step({ scenes: scenes.slice(0, mostScenes), typed: null })
  }

  /** Puts a scene in at this place; false where there is no room for another. */
  add(scene: Scene, place = this.scenes.length): boolean {
    if (this.scenes.length >= mostScenes) return false
    this.take(this.scenes.toSpliced(place, 0, scene))
    return true
  }

  /** Its copy follows it. */
  duplicate(place: number): boolean {
    return place in this.scenes && this.add({ ...this.scenes[place] }, place + 1)
  }

  remove(place: number): void {
    if (place in this.scenes) this.take(this.scenes.toSpliced(place, 1))
  }

  move(from: number, to: number): void {
    if (from in this.scenes && to in this.scenes && from !== to) this.take(moved(this.scenes, from, to))
  }

  /** Changes one scene; a field that is undefined is left out. Typing on in one field is one step. */
  edit(place: number, part: { readonly [Field in keyof Scene]?: Scene[Field] | undefined }): void {
    if (!(place in this.scenes)) return
    const whole = Object.entries({ ...this.scenes[place], ...part })
    const scene = Object.fromEntries(whole.filter(([, value]) => value !== undefined)) as unknown as Scene
    const fields = Object.keys(part)
    const isTyping = fields.length === 1 && typeof part[fields[0] as keyof Scene] === 'string'
    this.#step({ scenes: this.scenes.with(place, scene), typed: isTyping ? `${place} ${fields[0]}` : null })
  }

  undo(): void {
    this.#move(undo(this.#history))
  }

  redo(): void {
    this.#move(redo(this.#history))
  }

  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  #step(step: Step): void {
    const goesOn = step.typed !== null && step.typed === this.#history.present.typed
    this.#move(goesOn ? amend(this.#history, step) : advance(this.#history, step))
  }

  #move(history: History<Step>): void {
    if (history === this.#history) return
    this.#history = history
    for (const listener of this.#listeners) listener()
  }
}

const lectures = new WeakMap<Session, Lecture>()

/** The one lecture of this session. */
export function lectureOf(session: Session): Lecture {
  let lecture = lectures.get(session)
  if (!lecture) lectures.set(session, (lecture = new Lecture()))
  return lecture
}
